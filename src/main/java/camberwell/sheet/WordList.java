package camberwell.sheet;

import camberwell.knowledge.Term;
import camberwell.knowledge.Terms;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import static j2html.TagCreator.dd;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.section;

/** The trade's words that stand on a sheet, explained on it; those that the explanations use, too. */
final class WordList {

    private static final Pattern TAGS = Pattern.compile("<[^>]*>");

    private WordList() {
    }

    /** One section, or none where no word of the trade was used. */
    static List<DomContent> of(List<DomContent> parts, Terms terms) {
        StringBuilder text = new StringBuilder();
        parts.forEach(part -> text.append(TAGS.matcher(part.render()).replaceAll(" ").toLowerCase(Locale.ROOT))
                .append('\n'));
        List<Term> used = new ArrayList<>();
        for (boolean more = true; more;) {
            more = false;
            for (Term term : terms.all()) {
                if (!used.contains(term) && stands(term, text)) {
                    used.add(term);
                    text.append(term.meaning().toLowerCase(Locale.ROOT)).append('\n');
                    more = true;
                }
            }
        }
        return used.isEmpty() ? List.of() : List.of(section(h2("The words on this sheet"), dl(each(
                terms.all().stream().filter(used::contains).flatMap(term -> Stream.of(
                        dt(term.name().replace('-', ' ')), dd(term.meaning())))))));
    }

    private static boolean stands(Term term, CharSequence text) {
        String words = Pattern.quote(term.name()).replace("-", "\\E[- ]\\Q");
        return Pattern.compile("(?<![\\p{L}-])" + words + "s?(?![\\p{L}])").matcher(text).find();
    }
}
