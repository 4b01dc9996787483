package camberwell.saying;

import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the grammar alone tells for sure of a complaint, whatever it sounds like. How fast a corner is whose phrase tells it
 * beside the way it turns: "a tight left" is slow; the grammar takes the shorter meaning of such a phrase, and the fuller one is
 * taken where it reads the phrase as a corner at all, and nothing else tells the speed. And the end that does it, where the
 * grammar reads every word: "the rear bottoms over the crest".
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
        return cornered(sayings, said, read, placed(read, heard));
    }

    private static Heard placed(Heard read, Heard heard) {
        if (!read.exact() || read.told().size() != 1 || heard.told().size() != 1
                || read.told().get(0).symptom() != heard.told().get(0).symptom()) {
            return heard;
        }
        Told one = heard.told().get(0);
        Optional<Place> place = read.told().get(0).word(Place.class);
        if (place.isEmpty() || one.word(Place.class).isPresent()) {
            return heard;
        }
        List<Word> words = new ArrayList<>(one.words());
        words.add(0, place.get());
        return new Heard(heard.said(), List.of(new Told(one.symptom(), words, one.notIn())), heard.surface(), heard.fine(),
                heard.loose(), heard.unclear().stream().filter(it -> !it.words().equals(place.get().spoken())).toList(),
                heard.notUnderstood());
    }

    private static Heard cornered(Sayings sayings, String said, Heard read, Heard heard) {
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
