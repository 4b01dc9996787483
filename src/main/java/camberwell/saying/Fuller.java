package camberwell.saying;

import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How fast a corner is whose phrase tells it beside the way it turns: "a tight left" is slow. The grammar takes the shorter
 * meaning of such a phrase; the fuller one is taken where it reads the phrase as a corner at all, and nothing else tells the
 * speed.
 */
final class Fuller {

    private Fuller() {
    }

    /**
     * What is heard, with that.
     *
     * @param read as the grammar alone reads it
     */
    static Heard of(Sayings sayings, String said, Heard read, Heard heard) {
        List<Word> told = new ArrayList<>(read.loose());
        read.told().forEach(one -> told.addAll(one.words()));
        List<Meaning.Circumstance> corners = Cover.ofAll(sayings, said).stream().flatMap(atom -> atom.meanings().stream())
                .filter(Meaning.Circumstance.class::isInstance).map(Meaning.Circumstance.class::cast)
                .filter(it -> it.words().size() == 2 && told.contains(it.words().get(0))
                        && it.words().get(0) instanceof Turn && it.words().get(1) instanceof CornerSpeed).toList();
        if (corners.isEmpty() || heard.told().size() > 1) {
            return heard;
        }
        List<Told> fuller = heard.told().stream().map(one -> new Told(one.symptom(), fuller(one.words(), corners), one.notIn()))
                .toList();
        return new Heard(said, fuller, heard.surface(), heard.fine(), fuller(heard.loose(), corners), heard.unclear(),
                heard.notUnderstood());
    }

    private static List<Word> fuller(List<Word> words, List<Meaning.Circumstance> corners) {
        if (words.stream().anyMatch(word -> word instanceof CornerSpeed || word instanceof CornerKind)) {
            return words;
        }
        Optional<Word> speed = corners.stream().filter(it -> words.contains(it.words().get(0))).map(it -> it.words().get(1))
                .findFirst();
        List<Word> fuller = new ArrayList<>(words);
        speed.ifPresent(word -> fuller.add(words.indexOf(words.stream().filter(Turn.class::isInstance).findFirst()
                .orElseThrow()), word));
        return fuller;
    }
}
