package camberwell.saying;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A judge of how likely something is right")
class JudgeTest {

    private static Evidence surely(double likely) {
        return new Evidence().likely("sounds", likely, "silent");
    }

    /** Of what sounds surer nine in ten are right, of what sounds less sure three in ten: that, and not how it sounds, is told. */
    @Test
    @DisplayName("tells how often the like was right, and the same once it was written and read")
    void asOftenAsItWas() throws IOException {
        List<Judge.Case> cases = new ArrayList<>();
        for (int i = 0; i < 4000; i++) {
            cases.add(new Judge.Case(surely(0.99), i % 10 != 0));
            cases.add(new Judge.Case(surely(0.7), i % 10 < 3));
        }
        Judge judge = Judge.taught(cases);
        assertEquals(0.9, judge.likely(surely(0.99)), 0.05);
        assertEquals(0.3, judge.likely(surely(0.7)), 0.05);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        judge.write(new DataOutputStream(bytes));
        Judge read = Judge.read(ByteBuffer.wrap(bytes.toByteArray()));
        assertEquals(judge.likely(surely(0.7)), read.likely(surely(0.7)));
    }

    @Test
    @DisplayName("what lies within half a step of the logarithm of odds counts alike, what is certain is as good as nearly so")
    void steps() {
        assertArrayEquals(surely(0.70).features(), surely(0.71).features());
        assertArrayEquals(surely(1).features(), surely(0.9999).features());
        assertEquals(3, surely(0.5).features().length);
        assertArrayEquals(new Evidence().count("words", 9, 5).features(), new Evidence().count("words", 5, 5).features());
    }
}
