package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.advice.Advice;
import camberwell.engine.Conclusions;
import camberwell.engine.Consultation;
import camberwell.fact.Premise;
import camberwell.fact.Reported;
import camberwell.report.AdviceJson;
import camberwell.report.AdviceText;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.vocabulary.Wheel;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same facts give the same advice, in whatever order they come and go. */
class SteadyConclusionsTest {

    static Stream<String> names() {
        return Paddock.cases().keySet().stream();
    }

    @Provide
    Arbitrary<String> cases() {
        return Arbitraries.of(Paddock.cases().keySet());
    }

    @Property(tries = 120)
    @Label("complaints and tyres may be written down in any order: the advice is the same to the byte")
    void anyOrder(@ForAll("cases") String name, @ForAll long seed) {
        Case run = Paddock.run(name);
        List<Report> reports = new ArrayList<>(run.reports());
        List<Map.Entry<Wheel, TyreReading>> wheels = new ArrayList<>(run.tyres().entrySet());
        Collections.shuffle(reports, new Random(seed));
        Collections.shuffle(wheels, new Random(seed));
        Map<Wheel, TyreReading> tyres = new LinkedHashMap<>();
        wheels.forEach(wheel -> tyres.put(wheel.getKey(), wheel.getValue()));
        assertEquals(unnumbered(json(run)), unnumbered(json(run.withReports(reports).withTyres(tyres))), name);
        assertEquals(text(run), text(run.withReports(reports).withTyres(tyres)), name);
    }

    /** Answers carry the number of the complaint, in the order in which it was written down. */
    private static String unnumbered(String json) {
        int from = json.indexOf("\"answers\":[") + 11;
        int to = json.indexOf("],\"cautions\"", from);
        List<String> answers = new ArrayList<>(List.of(json.substring(from, to).replaceAll("\"report\":[0-9]+,", "")
                .split("(?<=\\}),")));
        Collections.sort(answers);
        return json.substring(0, from) + answers + json.substring(to);
    }

    @Property(tries = 60)
    @Label("facts may reach the working memory in any order: the conclusions are equal")
    void anyOrderOfFacts(@ForAll("cases") String name, @ForAll long seed) {
        List<Premise> premises = Paddock.premises(Paddock.run(name));
        List<Premise> shuffled = new ArrayList<>(premises);
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(Paddock.conclude(premises), Paddock.conclude(shuffled), name);
    }

    @ParameterizedTest
    @MethodSource("names")
    @DisplayName("a complaint that is taken back takes its conclusions with it, as if it had never been made")
    void withdrawn(String name) {
        List<Premise> premises = Paddock.premises(Paddock.run(name));
        Conclusions all = Paddock.conclude(premises);
        for (Premise taken : premises) {
            if (taken instanceof Reported) {
                List<Premise> others = premises.stream().filter(premise -> !premise.equals(taken)).toList();
                try (Consultation consultation = Paddock.rules().consult()) {
                    premises.forEach(consultation::insert);
                    assertEquals(all, consultation.conclude());
                    consultation.withdraw(taken);
                    Conclusions without = consultation.conclude();
                    assertEquals(Paddock.conclude(others), without, name + " without " + taken.statement());
                    consultation.insert(taken);
                    assertEquals(all, consultation.conclude());
                }
            }
        }
    }

    private static String json(Case run) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            new AdviceJson(Paddock.notes(), 9).write(Paddock.advise(run), json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String text(Case run) {
        Page page = new Page(80, false);
        Advice advice = Paddock.advise(run);
        new AdviceText(Paddock.notes(), 9, true).write(advice, page);
        return page.toString();
    }
}
