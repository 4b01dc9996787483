package camberwell.saying;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MeasureTest {
    @Test
    void measure() throws Exception {
        StringBuilder out = new StringBuilder();
        for (String name : System.getProperty("corpora").split(",")) {
            List<String> failures = new ArrayList<>();
            List<Corpus.Entry> entries = Corpus.read(name + ".txt");
            out.append("## ").append(name).append(' ').append(entries.size()).append(' ').append(Corpus.counts(entries, Corpus.listener(), failures)).append('\n');
            failures.forEach(it -> out.append(it).append('\n'));
        }
        java.nio.file.Files.writeString(java.nio.file.Path.of("/tmp/t5/out.txt"), out.toString());
    }
}
