package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.input.CaseReader;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WhatIfTest {

    private final Paddock paddock = new Paddock();

    @Test
    @DisplayName("one memory that is changed three hundred times gives the advice that a fresh one gives each time")
    void exact() throws IOException {
        List<Case> cases = Paddock.demoCases();
        Random random = new Random(19);
        try (WhatIf whatIf = new WhatIf(paddock.advisor, paddock.rules.consult(), told -> told)) {
            State state = State.of(cases.get(0), true);
            for (int i = 0; i < 300; i++) {
                state = otherwise(state, cases, random);
                Advice kept = whatIf.advise(state.run());
                Advice fresh = paddock.advisor.advise(state.run());
                String when = "after step " + i + ": " + state.run().reports();
                assertEquals(fresh.findings(), kept.findings(), when);
                assertEquals(fresh.changes(), kept.changes(), when);
                assertEquals(fresh.withheld(), kept.withheld(), when);
                assertEquals(fresh.driving(), kept.driving(), when);
                assertEquals(fresh.cautions(), kept.cautions(), when);
            }
        }
    }

    private static State otherwise(State state, List<Case> cases, Random random) {
        List<Field> fields = List.of(Field.PHASE, Field.SPEED, Field.WHERE, Field.SINCE, Field.SEVERITY,
                Field.OCCURRENCE, Field.TURN);
        List<Report> reports = state.run().reports();
        int what = random.nextInt(12);
        if (what == 0 || reports.isEmpty()) {
            return State.of(cases.get(random.nextInt(cases.size())), true);
        }
        if (what == 1) {
            Case shown = cases.get(random.nextInt(cases.size()));
            return State.of(state.run().withTyres(shown.tyres()), true);
        }
        if (what == 2) {
            List<Report> more = new ArrayList<>(reports);
            more.add(Report.of(Symptom.values()[random.nextInt(Symptom.values().length)]));
            return State.of(state.run().withReports(more), true);
        }
        if (what == 3) {
            return State.of(state.run().withReports(reports.subList(1, reports.size())), true);
        }
        Field field = fields.get(random.nextInt(fields.size()));
        Word word = field.words().get(random.nextInt(field.words().size()));
        return state.with(new Topic(field, random.nextInt(reports.size())), Answer.Said.of(word));
    }

    @Test
    @DisplayName("saying that it pushes in turns both ways after having said one way only takes back that it is one-sided")
    void takesBack() {
        Case run = new CaseReader().read(Path.of("demo-cases/pushes-in-snaps-out.yaml")).run();
        State state = State.of(run, true);
        Topic turn = new Topic(Field.TURN, 0);
        try (WhatIf whatIf = new WhatIf(paddock.advisor, paddock.rules.consult(), told -> told)) {
            Advice oneWay = whatIf.advise(state.with(turn, Answer.Said.of(Turn.LEFT)).run());
            assertTrue(oneWay.findings().stream().anyMatch(finding -> finding.id().equals("one-sided-behaviour")));
            Advice bothWays = whatIf.advise(state.with(turn, Answer.Said.of(Turn.BOTH)).run());
            assertTrue(bothWays.findings().stream().noneMatch(finding -> finding.id().equals("one-sided-behaviour")));
        }
    }
}
