package camberwell.classifier;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A tally of how many examples each feature is in")
class TallyTest {

    @Test
    @DisplayName("counts as a map does, each feature once an example, and beyond the room that it began with")
    void counts() {
        Random random = new Random(7);
        Tally tally = new Tally();
        Map<Integer, Integer> often = new HashMap<>();
        for (int example = 0; example < 4000; example++) {
            int[] features = new int[100];
            for (int i = 0; i < features.length; i++) {
                features[i] = i % 2 == 0 ? random.nextInt() : random.nextInt(1000);
            }
            tally.add(example, features);
            Arrays.stream(features).distinct().forEach(feature -> often.merge(feature, 1, Integer::sum));
        }
        for (int least : new int[] {1, 2, 180}) {
            int[] expected = often.keySet().stream().filter(feature -> often.get(feature) >= least)
                    .mapToInt(Integer::intValue).sorted().toArray();
            assertArrayEquals(expected, tally.often(least));
        }
    }
}
