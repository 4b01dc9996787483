package camberwell.debrief;

import camberwell.advice.Advisor;
import camberwell.advice.Weights;
import camberwell.engine.RuleBase;
import camberwell.input.CaseReader;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.Names;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.saying.Heard;
import camberwell.saying.Told;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** The built-in rules and the demo cases, and a driver who answers truthfully. */
final class Paddock {

    private static final Path HOME = Path.of(System.getProperty("camberwell.home"));

    final Notes notes;
    final RuleBase rules;
    final Advisor advisor;

    Paddock() {
        this(HOME);
    }

    Paddock(Path home) {
        try {
            notes = Notes.in(List.of(home.resolve("knowledge-notes")));
            Set<String> findings = new TreeSet<>(notes.names(Note.Kind.READING));
            findings.addAll(notes.names(Note.Kind.CAUSE));
            rules = RuleBase.open(home, new Names(Set.copyOf(notes.names(Note.Kind.ADJUSTMENT)), findings,
                    Set.copyOf(notes.names(Note.Kind.DRIVING)), Set.copyOf(notes.names(Note.Kind.CAUTION))),
                    RuleBase.defaultCache());
            advisor = new Advisor(rules, notes, Weights.read(home.resolve("rules/weights.yaml")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Case> demoCases() throws IOException {
        try (Stream<Path> files = Files.list(HOME.resolve("demo-cases"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted()
                    .map(file -> new CaseReader().read(file).run()).toList();
        }
    }

    Debrief debrief(Case run) {
        return Debrief.of(new Debrief.Source(() -> advisor, () -> rules, () -> notes, List::of), run);
    }

    /** The car and the day of a case, and what was tried before, with nothing said or measured. */
    static Case untold(Case run) {
        Conditions day = run.conditions();
        return run.withConditions(new Conditions(Conditions.UNKNOWN.said(), day.air(), Optional.empty(),
                day.coldTyres(), day.altitude(), Turn.BOTH)).withTyres(Map.of()).withReports(List.of());
    }

    /** Answers a debrief as the driver and the coach of one case would who know all of it and no more. */
    static final class Truthful {

        private final Case truth;
        private final boolean mainOnly;
        /** For each complaint of the debrief, the reports of the case that it may still stand for. */
        private final List<List<Report>> meant = new ArrayList<>();

        Truthful(Case truth) {
            this(truth, false);
        }

        /** @param mainOnly whether the first complaint alone is told until it is asked for more */
        Truthful(Case truth, boolean mainOnly) {
            this.truth = truth;
            this.mainOnly = mainOnly;
        }

        Answer to(Topic topic) {
            Optional<Answer> answer = switch (topic.field()) {
                case DOING -> doing();
                case PHASE -> each(topic.complaint(), Report::phase, Report::speed);
                case SPEED -> each(topic.complaint(), Report::speed);
                case WHERE -> each(topic.complaint(), Report::where);
                case SINCE -> report(topic).since().map(Answer.Said::of);
                case TURN -> report(topic).turn().map(Answer.Said::of);
                case SEVERITY -> Optional.of(Answer.Said.of(report(topic).severity(), report(topic).occurrence()));
                case OCCURRENCE -> Optional.of(Answer.Said.of(report(topic).occurrence()));
                case SURFACE -> Optional.of(Answer.Said.of(truth.conditions().surface()));
                case CIRCUIT -> Optional.of(Answer.Said.of(truth.conditions().turns()));
                case TRACK -> truth.conditions().track().map(Answer.Measured::new);
                case TYRES -> truth.tyres().isEmpty() ? Optional.empty()
                        : Optional.of(new Answer.Read(truth.tyres()));
                case SIMULATOR -> Optional.of(new Answer.Either(truth.car().simulator()));
                case LOOK -> Optional.of(new Answer.Nothing());
                case DOUBT -> Optional.of(new Answer.Chosen(Doubt.Choice.BOTH));
                case ELSE -> Optional.of(rest());
                case CAR, DRIVE, OWN, CHANGED, CAME, CORRECTED, BESIDES, CARRIED, CORNER -> Optional.empty();
            };
            return answer.orElse(new Answer.Unknown());
        }

        /** All of it, on being asked for the rest: who has said it already says it again in other words. */
        private Answer rest() {
            List<Told> told = new ArrayList<>();
            for (Report report : truth.reports()) {
                List<Word> words = new ArrayList<>(List.of(report.severity(), report.occurrence()));
                report.where().ifPresent(words::add);
                report.phase().ifPresent(words::add);
                report.speed().ifPresent(words::add);
                report.since().ifPresent(words::add);
                report.turn().ifPresent(words::add);
                told.add(new Told(report.symptom(), words, List.of()));
            }
            return new Answer.InWords(new Heard("", told, Optional.of(truth.conditions().surface()), false, List.of(),
                    List.of(), List.of()));
        }

        private Report report(Topic topic) {
            return meant.get(Math.min(topic.complaint(), meant.size() - 1)).get(0);
        }

        /** Each symptom once, in the order in which the case has them. */
        private Optional<Answer> doing() {
            List<Word> symptoms = new ArrayList<>();
            for (Report report : mainOnly ? truth.reports().stream().limit(1).toList() : truth.reports()) {
                int at = symptoms.indexOf(report.symptom());
                if (at < 0) {
                    symptoms.add(report.symptom());
                    meant.add(new ArrayList<>());
                    at = symptoms.size() - 1;
                }
                meant.get(at).add(report);
            }
            return symptoms.isEmpty() ? Optional.empty() : Optional.of(Answer.Said.each(symptoms));
        }

        /** Each way in which it happens, as far as {@code parts} tell ways apart. */
        @SafeVarargs
        private Optional<Answer> each(int complaint, Function<Report, Optional<? extends Word>>... parts) {
            if (complaint >= meant.size()) {
                // Of what was told as the rest, all was told that there is to tell.
                return Optional.empty();
            }
            List<Report> reports = meant.remove(complaint);
            Map<List<Word>, List<Report>> split = new LinkedHashMap<>();
            for (Report report : reports) {
                List<Word> words = new ArrayList<>();
                for (Function<Report, Optional<? extends Word>> part : parts) {
                    part.apply(report).ifPresent(words::add);
                }
                if (!words.isEmpty()) {
                    split.computeIfAbsent(words, key -> new ArrayList<>()).add(report);
                }
            }
            meant.addAll(complaint, split.isEmpty() ? List.of(reports) : split.values());
            return split.isEmpty() ? Optional.empty() : Optional.of(new Answer.Said(List.copyOf(split.keySet())));
        }
    }
}
