package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import camberwell.vocabulary.Audience;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page that is taken home, as a file. */
class SheetCommandTest {

    private static final String CASE = "demo-cases/pushes-in-snaps-out.yaml";
    private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);

    @TempDir
    private Path folder;

    private String sheet(String audience, String... cases) throws IOException {
        Path page = folder.resolve("page.html");
        List<String> arguments = new ArrayList<>(List.of("sheet", "-o", page.toString(), "--overwrite", "--for",
                audience));
        arguments.addAll(List.of(cases));
        InProcess run = InProcess.run(80, "", arguments.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        return Files.readString(page);
    }

    private static String[] demoCases() throws IOException {
        try (Stream<Path> files = Files.list(DemoCases.HOME.resolve("demo-cases"))) {
            return files.map(Path::toString).filter(file -> file.endsWith(".yaml")).sorted().toArray(String[]::new);
        }
    }

    /** Every fifth demo case is drawn; checking the style sheet again for each would say nothing new. */
    @ParameterizedTest(name = "for {0}")
    @EnumSource(Audience.class)
    @DisplayName("the pages of demo cases are valid HTML to the Nu Html Checker, and their drawings well-formed XML")
    void valid(Audience audience) throws Exception {
        String[] all = demoCases();
        String[] drawn = IntStream.range(0, all.length).filter(i -> i % 5 == audience.ordinal())
                .mapToObj(i -> all[i]).toArray(String[]::new);
        String page = sheet(audience.id(), drawn);
        EmbeddedValidator checker = new EmbeddedValidator();
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
        JsonNode messages = new ObjectMapper().readTree(checker.validate(
                new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)))).path("messages");
        List<String> wrong = new ArrayList<>();
        messages.forEach(message -> {
            if (!message.path("type").asText().equals("info") || message.path("subType").asText().equals("warning")) {
                wrong.add(message.path("message").asText() + " in " + message.path("extract").asText());
            }
        });
        assertEquals(List.of(), wrong.stream().distinct().toList());
        Matcher drawing = SVG.matcher(page);
        int drawings = 0;
        while (drawing.find()) {
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(
                    drawing.group().getBytes(StandardCharsets.UTF_8)));
            drawings++;
        }
        assertTrue(drawings > drawn.length, "most cases have drawings: " + drawings);
    }

    @Test
    @DisplayName("a page needs nothing but itself: no script, no address, no style but its own, and stays small")
    void alone() throws IOException {
        String page = sheet("engineer", CASE);
        assertAll(() -> assertFalse(page.contains("<script")), () -> assertFalse(page.contains("http://")),
                () -> assertFalse(page.contains("https://")), () -> assertFalse(page.contains(" style=")),
                () -> assertTrue(page.contains("default-src &#x27;none&#x27;")),
                () -> assertTrue(page.length() < 300_000, page.length() + " characters"));
    }

    @Test
    @DisplayName("the drawings show the figures that the JSON has")
    void figures() throws IOException {
        String page = sheet("engineer", CASE);
        JsonNode change = new ObjectMapper().readTree(InProcess.run(80, "", "advise", "--format", "json", CASE).out())
                .path("changes").get(0);
        JsonNode tread = new ObjectMapper().readTree(InProcess.run(80, "", "read", "--format", "json", CASE).out())
                .path("tyres").get(0).path("tread-celsius");
        assertAll(
                () -> assertEquals(change.path("from").asDouble(), shown(page, "travel", "now "), 1e-9),
                () -> assertEquals(change.path("to").asDouble(), shown(page, "travel", "next "), 1e-9),
                () -> assertEquals(change.path("score").asDouble(), shown(page, "score", "score "), 0.005),
                () -> assertTrue(drawing(page, "tread-front").contains(
                        "front left inner " + tread.path("inner").asInt() + ", middle " + tread.path("middle").asInt()),
                        tread.toString()));
    }

    private static double shown(String page, String drawing, String label) {
        Matcher figure = Pattern.compile(label + "(-?[0-9.]+)").matcher(drawing(page, drawing));
        double last = Double.NaN;
        while (figure.find()) {
            last = Double.parseDouble(figure.group(1).replaceFirst("\\.$", ""));
        }
        return last;
    }

    private static String drawing(String page, String id) {
        int start = page.indexOf("<figure id=\"case1-" + id);
        assertTrue(start >= 0, id);
        return page.substring(start, page.indexOf("</figure>", start));
    }

    @Test
    @DisplayName("a case with markup in its texts shows it as text")
    void hostileTexts() throws Exception {
        String written = Files.readString(DemoCases.HOME.resolve(CASE));
        Path hostile = folder.resolve("hostile.yaml");
        Files.writeString(hostile, written.replaceFirst("title: .*", Matcher.quoteReplacement(
                "title: <script>alert(1)</script> & <b> \"quoted\""))
                .replace("car: cars/", "car: " + DemoCases.HOME.resolve("demo-cases/cars").toAbsolutePath() + "/"));
        String page = sheet("club", hostile.toString());
        assertAll(() -> assertFalse(page.contains("<script>")), () -> assertTrue(page.contains("&lt;script&gt;")));
    }

    @Test
    @DisplayName("a page that is there already is not written over unless one says so")
    void kept() throws IOException {
        Path page = folder.resolve("mine.html");
        Files.writeString(page, "mine");
        InProcess run = InProcess.run(80, "", "sheet", CASE, "-o", page.toString());
        assertEquals(2, run.code());
        assertEquals("mine", Files.readString(page));
    }
}
