package camberwell.cli;

import camberwell.advice.Advisor;
import camberwell.advice.Weights;
import camberwell.audit.Audit;
import camberwell.car.Car;
import camberwell.engine.RuleBase;
import camberwell.input.CaseReader;
import camberwell.knowledge.Notes;
import camberwell.language.Dictionary;
import camberwell.language.RuleText;
import camberwell.pack.OwnSymptom;
import camberwell.pack.RulePack;
import camberwell.pack.RuleSet;
import camberwell.pack.Shelf;
import camberwell.report.AuditReport;
import camberwell.report.Voices;
import camberwell.saying.Listener;
import camberwell.saying.Sayings;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Camberwell's own rules, notes and weights, opened when first asked for. Safe for use by several threads. */
final class Engine {

    private static final Supplier<List<RulePack>> NO_PACKS = List::of;

    private final Home home;
    private final Path cache;
    private final AtomicBoolean opening = new AtomicBoolean();
    private final Shelf shelf;
    private final OwnWords words;
    private final boolean bare;
    private final Later<List<RulePack>> packs;
    private final Later<Notes> notes = new Later<>(this::readNotes);
    private final Later<Listener> listener = new Later<>(this::readListener);
    private final Later<RuleBase> rules = new Later<>(this::openRules);
    private final Later<RuleSet> ruleSet = new Later<>(() -> Home.reading(() ->
            RuleSet.read(home().folder(), Home.names(notes()), packs())));
    private final Later<Weights> weights = new Later<>(() -> packs().isEmpty() ? home().weights()
            : home().weights().with(OwnWords.thresholds(packs())));
    private final Later<Voices> voices = new Later<>(() -> packs().isEmpty() ? Voices.NONE
            : OwnWords.voices(packs(), rules().rules().values()));
    private final Later<Advisor> advisor = new Later<>(() -> new Advisor(rules(), notes(), weights()));
    private final Later<AuditReport> audit = new Later<>(this::judge);

    /**
     * @param home the folder that has {@code rules} and {@code knowledge-notes}
     * @param cache the folder for compiled rules
     */
    Engine(Path home, Path cache) {
        this(new Home(home), cache, Shelf.of(System.getenv()), NO_PACKS, new OwnWords());
    }

    private Engine(Home home, Path cache, Shelf shelf, Supplier<List<RulePack>> packs, OwnWords words) {
        this.home = home;
        this.cache = cache;
        this.shelf = shelf;
        this.words = words;
        bare = packs == NO_PACKS;
        this.packs = new Later<>(() -> words.of(packs.get()));
    }

    /** Forgets the words of the packs: what is run next in this process has its own. */
    void forget() {
        words.close();
    }

    /** One with the packs on {@code shelf}, which are read when rules are first asked for. */
    Engine withShelf(Shelf shelf) {
        return new Engine(home, cache, shelf, shelf.isBare() ? NO_PACKS : shelf::packs, words);
    }

    /** The packs of this user. */
    Shelf shelf() {
        return shelf;
    }

    /**
     * One with the rules and notes of {@code more} on top; this one stays as it is. A pack that is there already, in
     * this version or another, gives way.
     */
    Engine withRules(List<RulePack> more) {
        return more.isEmpty() ? this : new Engine(home, cache, shelf, () -> Stream.concat(packs().stream().filter(pack ->
                more.stream().noneMatch(other -> pack.isVersionOf(other))), more.stream()).toList(), words);
    }

    /** One with camberwell's own rules alone. */
    Engine builtIn() {
        return bare ? this : new Engine(home, cache, shelf, NO_PACKS, words);
    }

    /** The rule folders on top of the built-in rules. */
    List<RulePack> packs() {
        return packs.get();
    }

    /** What lies beside the program. */
    Home home() {
        return home;
    }

    /** Begins to open the rules on another core, for a command that will need them in a moment. */
    void openAhead() {
        if (!opening.getAndSet(true)) {
            Later.ahead("opens the rules", () -> rules.get().rehearse());
        }
    }

    /**
     * Begins to read the phrases on another core, for a talk that will need them in a moment.
     *
     * @param also what to do there besides, once that is done
     */
    void listenAhead(Runnable also) {
        Later.ahead("reads the phrases", () -> {
            listener.get().rehearse();
            also.run();
        });
    }

    Notes notes() {
        return notes.get();
    }

    /** What understands drivers' own words, with the phrases of the packs. */
    Listener listener() {
        return listener.get();
    }

    private Listener readListener() {
        Map<String, String> texts = home.sayings();
        packs().forEach(pack -> OwnWords.sayings(pack, texts));
        return new Listener(Sayings.read(texts));
    }

    /** Reads cases; what a driver said in them is understood by {@link #listener()}. */
    CaseReader cases() {
        return new CaseReader(said -> listener().hear(said), RuleSet.questions(packs()));
    }

    Weights weights() {
        return weights.get();
    }

    /** The rules that packs have replaced or switched off, each with what became of it, and by whom. */
    Map<RuleText, String> outOfUse() {
        return packs().isEmpty() ? Map.of() : ruleSet().outOfUse(packs());
    }

    RuleBase rules() {
        return rules.get();
    }

    private Notes readNotes() {
        Notes all = home.notes();
        for (RulePack pack : packs()) {
            all = all.with(pack.name() + "/" + RulePack.NOTES, pack.notes());
        }
        return all.with(OwnWords.effects(packs()));
    }

    private RuleBase openRules() {
        return Home.reading(() -> RuleBase.open(home.folder(), () -> Home.names(notes()), cache, packs()));
    }

    /** The sentences that rules are written in, without the rules. */
    Dictionary dictionary() {
        return home.dictionary().with(packs().stream().flatMap(pack -> pack.symptoms().stream()).map(OwnSymptom::id).toList());
    }

    /** The rules as they are read, before anything is compiled. */
    RuleSet ruleSet() {
        return ruleSet.get();
    }

    /** What the authors of the rule folders say; nobody's words where there are none. */
    Voices voices() {
        return voices.get();
    }

    Advisor advisor() {
        return advisor.get();
    }

    /** What the model says of each claim of the notes and the rules, on each reference car; it takes some seconds. */
    AuditReport audit() {
        return audit.get();
    }

    private AuditReport judge() {
        List<Car> cars = home.referenceCars();
        return new AuditReport(cars.stream().map(Car::name).toList(), new Audit(notes(), cars).judge(rules().rules().values()));
    }
}
