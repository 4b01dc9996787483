package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A word that answers")
class ReplyTest {

    @ParameterizedTest
    @ValueSource(strings = {"no", "Nope.", "nope, that's it", "no that's all", "no thanks, all good", "no, nothing else"})
    @DisplayName("no may be said with a closing word")
    void no(String typed) {
        assertTrue(Reply.no(typed));
        assertFalse(Reply.yes(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "yep, that's it", "ok thanks", "right, that is all"})
    @DisplayName("so may yes")
    void yes(String typed) {
        assertTrue(Reply.yes(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no grip", "no, it pushes", "right front locks", "none of it, but it bottoms", ""})
    @DisplayName("what says more is neither")
    void more(String typed) {
        assertFalse(Reply.no(typed));
        assertFalse(Reply.yes(typed));
    }
}
