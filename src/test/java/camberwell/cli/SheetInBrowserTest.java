package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.print.PrintOptions;

/** The page in a real browser, where there is one: {@code chromium} and {@code chromedriver} on the path. */
class SheetInBrowserTest {

    /** Says on every start that it does not know the browser's very version; kept here, or it is collected. */
    private static final Logger TALKATIVE = Logger.getLogger("org.openqa.selenium");

    private static ChromeDriver browser;

    @TempDir
    private static Path folder;

    @BeforeAll
    static void open() {
        Optional<Path> chromium = onPath("chromium");
        Optional<Path> driver = onPath("chromedriver");
        Assumptions.assumeTrue(chromium.isPresent() && driver.isPresent(),
                "no chromium and chromedriver on the path: the pages are not looked at in a browser");
        TALKATIVE.setLevel(Level.SEVERE);
        LoggingPreferences all = new LoggingPreferences();
        all.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.get().toFile());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu");
        options.setCapability("goog:loggingPrefs", all);
        browser = new ChromeDriver(new ChromeDriverService.Builder().usingDriverExecutable(driver.get().toFile()).build(),
                options);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    private static Optional<Path> onPath(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator)).map(place -> Path.of(place, program))
                .filter(Files::isExecutable).findFirst();
    }

    private static void show(String name, String audience) {
        Path page = folder.resolve(name + "-" + audience + ".html");
        InProcess run = InProcess.run(80, "", "sheet", "demo-cases/" + name + ".yaml", "--for", audience, "-o",
                page.toString(), "--overwrite");
        assertEquals(0, run.code(), run.err());
        browser.get(page.toUri().toString());
    }

    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource({"pushes-in-snaps-out, club", "pushes-on-a-cold-morning, newcomer", "loose-from-apex-to-exit, engineer",
        "rolls-onto-the-shoulders, engineer", "wet-single-seater, newcomer"})
    @DisplayName("nothing overflows at three widths, nothing is said on the console, nothing is asked of the network, a "
            + "screen reader finds its way, and it prints on two pages")
    void inTheBrowser(String name, String audience) throws IOException {
        show(name, audience);
        List<String> wrong = new ArrayList<>();
        for (int width : new int[] {360, 768, 1280}) {
            browser.manage().window().setSize(new Dimension(width, 900));
            long over = (Long) browser.executeScript(
                    "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
            if (over > 0) {
                wrong.add("at " + width + " px something stands out by " + over + " px");
            }
        }
        for (LogEntry entry : browser.manage().logs().get(LogType.BROWSER)) {
            wrong.add("console: " + entry.getMessage());
        }
        Object requests = browser.executeScript("return performance.getEntriesByType('resource').length");
        assertEquals(0L, requests, "requests");
        new AxeBuilder().analyze(browser).getViolations().forEach(found ->
                wrong.add(found.getId() + ": " + found.getHelp() + " " + found.getNodes().get(0).getHtml()));
        assertEquals(List.of(), wrong);
        assertEquals(2, printedPages(), "printed pages");
    }

    private static int printedPages() {
        byte[] pdf = Base64.getDecoder().decode(browser.print(new PrintOptions()).getContent());
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        assertTrue(text.startsWith("%PDF"), "a PDF");
        return text.split("/Type ?/Page\\b(?!s)", -1).length - 1;
    }
}
