package camberwell.sheet;

import camberwell.advice.Advice;
import camberwell.history.History;
import camberwell.history.Plan;
import camberwell.knowledge.Notes;
import camberwell.knowledge.Terms;
import camberwell.report.Voices;
import camberwell.vocabulary.Audience;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

import static j2html.TagCreator.body;
import static j2html.TagCreator.each;
import static j2html.TagCreator.head;
import static j2html.TagCreator.html;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.style;
import static j2html.TagCreator.title;

/**
 * One self-contained HTML page with the advice on one or more cases. It runs no script and loads nothing; its content
 * security policy says so to the browser, and lets in the page's own style sheet by its SHA-256 alone (W3C, Content
 * Security Policy Level 3). Colours are the blue, vermilion and bluish green of Okabe and Ito, Color Universal Design
 * (2008), lightened on dark paper and darkened where a text needs it; no meaning hangs on a colour alone.
 */
public final class SheetPage {

    private final Notes notes;
    private final Terms terms;
    private final Audience audience;
    private Voices voices = Voices.NONE;

    /** @param audience whose words and how many of them; the conclusions are the same */
    public SheetPage(Notes notes, Terms terms, Audience audience) {
        this.notes = notes;
        this.terms = terms;
        this.audience = audience;
    }

    /** The same page, with what the authors of rule packs say. */
    public SheetPage with(Voices others) {
        voices = others;
        return this;
    }

    /** The whole page, in the order of the cases. */
    public String page(List<Advice> cases) {
        List<DomContent> articles = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            articles.add(new CaseSheet(cases.get(i), notes, terms, audience, voices, "case" + (i + 1), List.of()).whole());
        }
        return page(cases.size() == 1 ? cases.get(0).run().title() : cases.size() + " cases", articles);
    }

    /** The page of the last run of a book, with the runs before it and the plan for those to come. */
    public String page(Advice last, History history, Plan plan) {
        return page(last.run().title(), List.of(new CaseSheet(last, notes, terms, audience, voices, "case1",
                RunsPart.of("case1", history, plan)).whole()));
    }

    private static String page(String title, List<DomContent> articles) {
        String css = css();
        return "<!DOCTYPE html>\n" + html(
                head(
                        meta().withCharset("utf-8"),
                        meta().attr("http-equiv", "Content-Security-Policy").withContent("default-src 'none'; style-src '"
                                + hash(css) + "'; base-uri 'none'; form-action 'none'"),
                        meta().withName("viewport").withContent("width=device-width, initial-scale=1"),
                        meta().withName("color-scheme").withContent("light dark"),
                        title(title),
                        style().with(rawHtml(css))),
                body(main(each(articles.stream())))).withLang("en").render() + "\n";
    }

    private static String css() {
        try (InputStream file = SheetPage.class.getResourceAsStream("sheet.css")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String hash(String css) {
        try {
            return "sha256-" + Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256")
                    .digest(css.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
