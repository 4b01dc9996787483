package camberwell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.cases.Paddock;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A complaint that nothing answers, and one of heat that the pyrometer does not bear out")
class UnansweredTest {

    private static final Path CAR = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/corvane-coupe.yaml");

    private static String page(String symptom, int inner) {
        StringBuilder tyres = new StringBuilder("tyres:\n");
        for (String wheel : new String[] {"front-left", "front-right", "rear-left", "rear-right"}) {
            tyres.append("  ").append(wheel).append(": {inner: ").append(inner).append(" °C, middle: ").append(inner - 4)
                    .append(" °C, outer: ").append(inner - 8).append(" °C}\n");
        }
        Advice advice = Paddock.advise(Trackside.yaml("title: a\ncar: " + CAR + "\nreports:\n  - {symptom: " + symptom
                + ", where: front, severity: clear, occurrence: every-lap}\n" + tyres));
        Page page = new Page(200, false);
        new AdviceText(Paddock.notes(), 3, false).write(advice, page);
        return page.toString();
    }

    /** The window of this car's tyres goes from 75 to 100 °C. */
    @ParameterizedTest
    @CsvSource({"overheating, 92, the treads read 88 °C on average, which is not too hot for them",
        "slow-warm-up, 92, the treads read 88 °C on average, which is warm enough for them"})
    @DisplayName("is answered with what was read, and nobody is asked to read the tyres again")
    void acquitted(String symptom, int inner, String told) {
        String page = page(symptom, inner);
        assertTrue(page.contains(told), page);
        assertFalse(page.contains("read the tyres"), page);
    }

    @ParameterizedTest
    @CsvSource({"overheating, 118", "slow-warm-up, 66"})
    @DisplayName("is none where the treads show it")
    void borneOut(String symptom, int inner) {
        assertEquals(-1, page(symptom, inner).indexOf("on average, which is"));
    }

    /** A push in slow corners and a slide in fast ones pull all that is here both ways; by phase they may come apart. */
    @ParameterizedTest
    @CsvSource({"'', '', 'Tell where in the corner each comes, and read the tyres.'",
        "'phase: exit, ', '', 'Tell where in the corner it comes'", "'phase: exit, ', 'phase: entry, ', ''"})
    @DisplayName("that has led to no change and leaves its part of the corner open is asked for it")
    void whereInTheCorner(String push, String slide, String asked) {
        Advice advice = Paddock.advise(Trackside.yaml("title: a\ncar: {name: a, drive: rear, adjusters: {front-anti-roll-bar: "
                + "{now: 4, min: 1, max: 7, step: 1}, rear-anti-roll-bar: {now: 4, min: 1, max: 7, step: 1}}}\nreports:\n"
                + "  - {symptom: understeer, " + push + "speed: slow}\n  - {symptom: oversteer, " + slide + "speed: fast}\n"));
        Page page = new Page(200, false);
        new AdviceText(Paddock.notes(), 3, false).write(advice, page);
        assertTrue(page.toString().contains(asked), page.toString());
        assertEquals(!asked.isEmpty(), page.toString().contains("Tell where"), page.toString());
    }
}
