package camberwell.pack;

import camberwell.problem.Text;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A word for a complaint that a pack brings along.
 *
 * @param id as cases and rules write it
 * @param felt what it feels like: so the debrief lists it to choose from
 * @param tyre whether it is bound to an axle or a wheel
 * @param axle the end of the car that it is about, where that is always the same one
 * @param helpedBy what one step of a change does to it, 1 to 3; the other way does the contrary
 */
public record OwnSymptom(String id, String felt, boolean tyre, Optional<Axle> axle, Map<Change, Integer> helpedBy) {

    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final int MOST = 50;
    private static final int STRONGEST = 3;

    /** Reads the file of a pack; what is wrong with it is noted. */
    static List<OwnSymptom> read(String file, String text, Problems problems) {
        List<OwnSymptom> symptoms = new ArrayList<>();
        Document.parse(file, text, problems).ifPresent(document -> {
            Fields fields = document.fields("symptom");
            for (String id : fields.keys()) {
                fields.map(id, "key").flatMap(entry -> read(id, entry, fields)).ifPresent(symptoms::add);
            }
            if (symptoms.size() > MOST) {
                fields.error("there are more than " + MOST + " words");
            }
            fields.done();
        });
        return List.copyOf(symptoms);
    }

    /** The word of that name; empty where a word cannot be called so. */
    private static Optional<OwnSymptom> read(String id, Fields entry, Fields all) {
        boolean named = ID.matcher(id).matches();
        if (!named) {
            all.errorAtKey(id, "a symptom is made of small letters, numbers and dashes" + Text.spelledPlainly(id));
        } else if (isBuiltIn(id)) {
            all.errorAtKey(id, Text.quoted(id) + " is a symptom of camberwell's own; rules may ask for it as it is, and a word "
                    + "of yours needs another name");
        }
        entry.require("felt");
        String felt = entry.text("felt").orElse("");
        boolean tyre = entry.yes("tyre");
        Optional<Axle> axle = entry.word("axle", Axle.class);
        Map<Change, Integer> helpedBy = new LinkedHashMap<>();
        entry.map("helped-by", "change").ifPresent(changes -> {
            for (String key : changes.keys()) {
                Optional<Change> change = changes.changeOfKey(key);
                changes.whole(key, 1, STRONGEST).ifPresent(effect -> change.ifPresent(it -> helpedBy.put(it, effect)));
            }
            changes.done();
        });
        entry.done();
        return named && !isBuiltIn(id) ? Optional.of(new OwnSymptom(id, felt, tyre, axle, helpedBy)) : Optional.empty();
    }

    private static boolean isBuiltIn(String id) {
        return Word.find(Symptom.class, id).filter(symptom -> !Symptom.isBrought(symptom)).isPresent();
    }
}
