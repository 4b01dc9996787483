package camberwell.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.fact.Day;
import camberwell.fact.Finding;
import camberwell.fact.Outing;
import camberwell.fact.Premise;
import camberwell.fact.Reading;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.language.Condition;
import camberwell.language.Dictionary;
import camberwell.language.Line;
import camberwell.language.Sentence;
import camberwell.language.Trial;
import camberwell.pack.Source;
import camberwell.run.Background;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Pupil;
import camberwell.run.Report;
import camberwell.run.Stint;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Aid;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CarKind;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Compound;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Level;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Wish;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

@Label("A sentence means one thing: what Drools matches is what the typed question asks")
class OneMeaningTest {

    private static final List<Condition> CONDITIONS = conditions();
    private static final KieBase RULES = compiled();
    private static final Set<String> HELD = new TreeSet<>();

    private static Dictionary dictionary() {
        try {
            return Dictionary.read(Path.of(System.getProperty("camberwell.home"), "rules", "dictionary.dsl"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every sentence with the first, a middle and the last word in each gap; the dashes under a report. */
    private static List<Condition> conditions() {
        Dictionary dictionary = dictionary();
        List<Condition> conditions = new ArrayList<>();
        Line report = line(dictionary, "the driver reports understeer");
        for (Sentence sentence : dictionary.sentences()) {
            if (sentence.condition()) {
                Set<String> texts = new TreeSet<>();
                for (double share : new double[] {0, 0.3, 0.6, 0.99}) {
                    texts.add(sentence.filled(words(sentence, share)));
                }
                texts.forEach(text -> {
                    Line line = line(dictionary, text);
                    conditions.add(sentence.narrowing() ? Condition.of(report, List.of(line))
                            : Condition.of(line, List.of()));
                });
            }
        }
        return conditions;
    }

    private static Map<String, String> words(Sentence sentence, double share) {
        Map<String, String> words = new LinkedHashMap<>();
        for (Sentence.Gap gap : sentence.gaps()) {
            words.put(gap.name(), switch (gap.name()) {
                case "number", "figure" -> share < 0.5 ? "2" : "2.5";
                case "finding" -> share < 0.5 ? "front-tyres-cold" : "rear-tyres-hot";
                case "question" -> "kerb-height";
                case "answer" -> share < 0.5 ? "tall" : "low";
                case "against", "another" -> gap.words().get((int) (share * gap.words().size() + 1) % gap.words().size());
                default -> gap.words().get((int) (share * gap.words().size()));
            });
        }
        return sentence.sensible(words);
    }

    private static Line line(Dictionary dictionary, String text) {
        Map.Entry<Sentence, Map<String, String>> match = dictionary.match(true, text).orElseThrow();
        return Line.of(match.getKey(), match.getValue(), text, 1, 1);
    }

    private static KieBase compiled() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < CONDITIONS.size(); i++) {
            text.append("rule \"").append(i).append("\"\nwhen\n").append(CONDITIONS.get(i).head().text()).append('\n');
            CONDITIONS.get(i).narrowings().forEach(line -> text.append(line.text()).append('\n'));
            text.append("then\nfind front-tyres-hot with certainty 0.5\nend\n");
        }
        RuleCompiler compiler = new RuleCompiler(dictionary());
        CompiledRules compiled = compiler.compile(List.of(new Source("sentences.dslr", text.toString(), true))).get(0);
        try {
            return KieBaseBuilder.createKieBaseFromModel((Model) Class.forName(compiled.modelClass(), true,
                    new ByteClassLoader(compiled.classes())).getDeclaredConstructor().newInstance());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    @Property(tries = 300)
    @Label("on whatever facts there are, a pattern matches exactly what the question holds of")
    void same(@ForAll long seed) {
        List<Premise> facts = facts(new Random(seed));
        Set<Integer> fired = new TreeSet<>();
        try (Consultation consultation = new Consultation(RULES.newKieSession(), Set.of())) {
            consultation.listen(firing -> fired.add(Integer.parseInt(firing.rule())));
            facts.forEach(consultation::insert);
            consultation.conclude();
        }
        for (int i = 0; i < CONDITIONS.size(); i++) {
            Condition condition = CONDITIONS.get(i);
            boolean holds = Trial.of(condition, facts).holds();
            assertEquals(fired.contains(i), holds, condition.text() + " on " + facts);
            if (holds) {
                HELD.add(condition.text());
            }
        }
    }

    @Property(tries = 1)
    @Label("no sentence is one that no fact ever meets")
    void everySentenceHoldsOfSomething() {
        Random random = new Random(1);
        for (int i = 0; i < 3000; i++) {
            List<Premise> facts = facts(random);
            CONDITIONS.stream().filter(condition -> Trial.of(condition, facts).holds())
                    .forEach(condition -> HELD.add(condition.text()));
        }
        List<String> never = CONDITIONS.stream().map(Condition::text).filter(text -> !HELD.contains(text)).toList();
        assertTrue(never.isEmpty(), never.toString());
    }

    private static List<Premise> facts(Random random) {
        List<Premise> facts = new ArrayList<>();
        facts.add(new Setup(car(random)));
        Conditions day = new Conditions(some(random, one(Surface.class, random)), some(random, celsius(random)),
                some(random, celsius(random)), Optional.empty(), Optional.empty(), one(Turn.class, random));
        facts.add(new Day(day));
        facts.add(new Outing(outing(car(random), day, random)));
        for (int i = random.nextInt(5); i > 0; i--) {
            facts.add(new Reported(new Report(random.nextBoolean() ? Symptom.UNDERSTEER : one(Symptom.class, random),
                    some(random, one(Place.class, random)), some(random, one(Phase.class, random)),
                    some(random, one(CornerSpeed.class, random)), one(Severity.class, random),
                    one(Occurrence.class, random), some(random, one(Since.class, random)),
                    some(random, one(Turn.class, random)), Optional.empty(), some(random, one(CornerKind.class, random))),
                    1));
        }
        for (int i = random.nextInt(8); i > 0; i--) {
            facts.add(new Reading(one(Place.class, random), one(Reading.State.class, random), 0.7, "as read"));
        }
        double[] edges = {-0.4, 0.1999, 0.2, 0.35, 0.5999, 0.6, 0.9};
        facts.add(new Finding("front-tyres-cold", edges[random.nextInt(edges.length)], List.of()));
        if (random.nextBoolean()) {
            facts.add(new Finding("rear-tyres-hot", edges[random.nextInt(edges.length)], List.of()));
        }
        return facts;
    }

    private static Quantity celsius(Random random) {
        return new Quantity(random.nextBoolean() ? random.nextInt(60) : random.nextInt(40) - 20, Unit.CELSIUS);
    }

    /** A run with figures at and about those that the sentences ask for. */
    private static Case outing(Car car, Conditions day, Random random) {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            if (random.nextInt(4) > 0) {
                tyres.put(wheel, new TyreReading(some(random, tread(random)), some(random, tread(random)),
                        some(random, tread(random)), some(random, bar(random)), some(random, bar(random))));
            }
        }
        Stint stint = new Stint(some(random, one(Compound.class, random)), some(random, random.nextInt(60)),
                some(random, 1 + random.nextInt(25)), some(random, new Quantity(random.nextInt(5), Unit.KILOGRAM)));
        Pupil pupil = new Pupil(Optional.empty(), some(random, one(Level.class, random)),
                random.nextBoolean() ? List.of(one(Wish.class, random)) : List.of());
        List<Tried> tried = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            String[] ids = {"front-toe toe-out", "rear-pressure lower", "front-bump softer", "differential-coast less"};
            tried.add(Tried.of(random.nextInt(3) == 0 ? Change.parse(ids[random.nextInt(ids.length)]).orElseThrow()
                    : Change.all().get(random.nextInt(Change.all().size())), one(Outcome.class, random)));
        }
        return new Case("a run", "-", car, day, tyres, List.of(), List.of()).withTried(tried).withBackground(
                new Background(stint, pupil, random.nextBoolean() ? Map.of("kerb-height",
                random.nextBoolean() ? "tall" : "low") : Map.of(), Optional.empty()));
    }

    private static Quantity tread(Random random) {
        return new Quantity(random.nextBoolean() ? random.nextInt(6) - 20 : 80 + random.nextInt(12), Unit.CELSIUS);
    }

    private static Quantity bar(Random random) {
        double[] bars = {0.01, 0.02, 0.3, 1.5, 2.1, 2.4, 5};
        return new Quantity(bars[random.nextInt(bars.length)], Unit.BAR);
    }

    private static Setting setting(Adjuster adjuster, Random random) {
        List<Unit> units = adjuster.measure().units();
        Unit unit = random.nextInt(3) == 0 ? Unit.POSITION : units.get(random.nextInt(units.size()));
        double now = (random.nextInt(13) - 6) / 2.0;
        double down = random.nextBoolean() ? now : -9;
        double up = random.nextBoolean() ? now : 9;
        return new Setting(new Quantity(now, unit), new Quantity(down, unit), new Quantity(up, unit),
                new Quantity(random.nextBoolean() ? 0.1 : 4, unit), random.nextBoolean());
    }

    /** The angles are such as lie at and about those that the sentences ask for. */
    private static Car car(Random random) {
        boolean generic = random.nextInt(4) == 0;
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        for (Adjuster adjuster : Adjuster.values()) {
            if (random.nextBoolean()) {
                double now = (random.nextInt(13) - 6) / 2.0;
                adjusters.put(adjuster, random.nextBoolean() ? setting(adjuster, random) : new Setting(
                        new Quantity(now, Unit.DEGREE), new Quantity(-9, Unit.DEGREE),
                        new Quantity(9, Unit.DEGREE), new Quantity(0.1, Unit.DEGREE), false));
            }
        }
        Optional<Drive> drive = generic && random.nextBoolean() ? Optional.empty()
                : Optional.of(one(Drive.class, random));
        Map<Axle, TyreSpec> tyres = new EnumMap<>(Axle.class);
        for (Axle axle : Axle.values()) {
            tyres.put(axle, new TyreSpec(Optional.empty(), Optional.empty(), some(random, bar(random)), Optional.empty(),
                    Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(), Optional.empty()));
        }
        Map<Dimension, Quantity> dimensions = random.nextBoolean() ? Map.of()
                : Map.of(Dimension.MASS, new Quantity(random.nextInt(5), Unit.KILOGRAM));
        Car car = new Car("a car", drive, adjusters, tyres, dimensions, generic);
        car = random.nextBoolean() ? car.withKind(one(CarKind.class, random)) : car;
        car = random.nextBoolean() ? car.withAids(Set.of(one(Aid.class, random))) : car;
        return random.nextBoolean() ? car.withSimulator(random.nextBoolean()) : car;
    }

    private static <W extends Word> W one(Class<W> type, Random random) {
        List<W> words = Word.all(type);
        return words.get(random.nextInt(words.size()));
    }

    private static <T> Optional<T> some(Random random, T there) {
        return random.nextInt(3) == 0 ? Optional.empty() : Optional.of(there);
    }
}
