package camberwell.report;

import camberwell.channel.Binding;
import camberwell.channel.LoggedUnit;
import camberwell.observe.Agreement;
import camberwell.observe.Habit;
import camberwell.observe.Observed;
import camberwell.run.Measured;
import camberwell.run.Report;
import camberwell.units.Figures;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a logged run shows, as a tree of maps and lists for programs. */
public final class ObservationJson {

    private ObservationJson() {
    }

    /** The tree. */
    public static Map<String, Object> of(Observed observed, List<Agreement> agreements) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("log", observed.log().name());
        tree.put("rows", observed.log().rows());
        tree.put("rate", rounded(observed.log().rowRate(), 1));
        tree.put("laps", observed.laps().stream().map(ObservationJson::lap).toList());
        tree.put("laps-by", observed.lapsBy());
        tree.put("corners", observed.corners().stream().map(ObservationJson::corner).toList());
        observed.line().ifPresent(line -> {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("steering-ratio", rounded(line.ratio(), 2));
            map.put("understeer-gradient", rounded(line.gradient(), 2));
            map.put("unit", "deg/g");
            map.put("scatter", rounded(line.scatter(), 3));
            map.put("counts-from", rounded(line.starts(), 2));
            tree.put("line", map);
        });
        observed.against().ifPresent(earlier -> {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("log", earlier.log());
            earlier.gradient().ifPresent(gradient -> map.put("understeer-gradient", rounded(gradient, 2)));
            tree.put("against", map);
        });
        tree.put("phases", observed.cells().stream().map(ObservationJson::cell).toList());
        tree.put("reports", observed.reports().stream().map(ObservationJson::report).toList());
        tree.put("driver", observed.habits().stream().map(ObservationJson::habit).toList());
        tree.put("agreement", agreements.stream().map(ObservationJson::agreement).toList());
        Map<String, Object> channels = new LinkedHashMap<>();
        observed.channels().forEach(binding -> channels.put(binding.channel().id(), channel(binding)));
        tree.put("channels", channels);
        tree.put("not-used", observed.log().unused());
        tree.put("not-judged", observed.notJudged());
        tree.put("cleaning", observed.log().cleaning());
        tree.put("doubts", observed.doubts());
        return tree;
    }

    private static Map<String, Object> lap(Observed.LapTold lap) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("lap", lap.number());
        map.put("seconds", rounded(lap.seconds(), 2));
        map.put("counts", lap.leftOut().isEmpty());
        lap.leftOut().ifPresent(why -> map.put("left-out", why));
        return map;
    }

    private static Map<String, Object> corner(Observed.CornerTold corner) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("corner", corner.number());
        map.put("direction", corner.direction());
        map.put("speed", corner.speed());
        map.put("from", rounded(corner.from(), 0));
        map.put("to", rounded(corner.to(), 0));
        map.put("slowest", rounded(corner.slowest(), 1));
        return map;
    }

    private static Map<String, Object> cell(Observed.Cell cell) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("corner", cell.corner());
        map.put("phase", cell.phase().id());
        map.put("front", rounded(cell.front(), 2));
        map.put("rear", rounded(cell.rear(), 2));
        map.put("unit", "deg");
        return map;
    }

    private static Map<String, Object> report(Report report) {
        Map<String, Object> map = said(report);
        Measured measured = report.measured().orElseThrow();
        map.put("certainty", rounded(measured.certainty(), 3));
        map.put("driver-share", rounded(measured.driver(), 2));
        map.put("measured", measured.how());
        map.put("evidence", places(measured.evidence()));
        return map;
    }

    private static Map<String, Object> said(Report report) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("symptom", report.symptom().id());
        put(map, "where", report.where());
        put(map, "phase", report.phase());
        put(map, "speed", report.speed());
        map.put("severity", report.severity().id());
        map.put("occurrence", report.occurrence().id());
        put(map, "since", report.since());
        put(map, "turn", report.turn());
        return map;
    }

    private static void put(Map<String, Object> map, String key, Optional<? extends Word> word) {
        word.ifPresent(it -> map.put(key, it.id()));
    }

    private static List<Map<String, Object>> places(List<Measured.Place> places) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (Measured.Place place : places) {
            Map<String, Object> map = new LinkedHashMap<>();
            place.corner().ifPresent(corner -> map.put("corner", corner));
            place.lap().ifPresent(lap -> map.put("lap", lap));
            map.put("figure", rounded(place.figure(), 2));
            map.put("reference", rounded(place.reference(), 2));
            map.put("unit", place.unit());
            list.add(map);
        }
        return list;
    }

    private static Map<String, Object> habit(Habit habit) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("note", habit.note());
        map.put("certainty", rounded(habit.certainty(), 3));
        map.put("text", habit.text());
        map.put("evidence", places(habit.evidence()));
        return map;
    }

    private static Map<String, Object> agreement(Agreement agreement) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("said", said(agreement.said()));
        map.put("log", agreement.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        map.put("text", agreement.text());
        return map;
    }

    private static Map<String, Object> channel(Binding binding) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("column", binding.heading());
        map.put("unit", binding.unit().map(LoggedUnit::symbol).orElse(""));
        map.put("sign", binding.sign());
        map.put("guessed", binding.guessed());
        return map;
    }

    private static Object rounded(double number, int decimals) {
        return Double.isNaN(number) ? null : new java.math.BigDecimal(Figures.fixed(number, decimals));
    }
}
