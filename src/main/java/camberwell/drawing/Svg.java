package camberwell.drawing;

import camberwell.units.Figures;
import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import j2html.tags.specialized.FigureTag;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import static j2html.TagCreator.each;
import static j2html.TagCreator.figcaption;
import static j2html.TagCreator.figure;
import static j2html.TagCreator.rawHtml;

/**
 * The few elements that the drawings are made of. Lengths are in the drawing's own units, which a screen shows as pixels
 * at most; colours and dashes come from a style sheet by class: the page's, so that dark mode and print have their own, or
 * that of drawings which are files of their own, {@code file.css}.
 */
public final class Svg {

    /** An element of a drawing. */
    public static final class Element extends ContainerTag<Element> {
        private Element(String name) {
            super(name);
        }
    }

    /** What a letter of a heading takes of the width, rather more than less. */
    private static final double HEADING = 8;

    private Svg() {
    }

    /**
     * A drawing with its caption.
     *
     * @param id unique in the page; the title and the description are named after it
     * @param title what is drawn
     * @param description what a person sees in it who cannot see it: the figures themselves
     */
    public static FigureTag drawing(String id, double width, double height, String title, String description,
            List<DomContent> parts) {
        Element svg = new Element("svg").attr("role", "img").attr("viewBox", "0 0 " + number(width) + " " + number(height))
                .attr("aria-labelledby", id + "-title " + id + "-text")
                .with(new Element("title").withId(id + "-title").withText(title),
                        new Element("desc").withId(id + "-text").withText(description), each(parts.stream()));
        return figure(svg, figcaption(title)).withId(id);
    }

    /** A drawing that is a whole file, with its title above it, which ends 30 from the upper edge. */
    public static String file(double width, double height, String title, List<DomContent> parts) {
        return new Element("svg").attr("xmlns", "http://www.w3.org/2000/svg").attr("role", "img")
                .attr("viewBox", "0 0 " + number(width) + " " + number(height)).attr("aria-labelledby", "title")
                .with(new Element("title").withId("title").withText(title), new Element("style").with(rawHtml(style())),
                        rectangle("paper", 0, 0, width, height),
                        text(title.length() * HEADING > width ? "long heading" : "heading", 16, 26, "start", title),
                        each(parts.stream())).render() + "\n";
    }

    private static String style() {
        try (InputStream file = Svg.class.getResourceAsStream("file.css")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A straight line. */
    public static Element line(String style, double x1, double y1, double x2, double y2) {
        return new Element("line").withClass(style).attr("x1", number(x1)).attr("y1", number(y1))
                .attr("x2", number(x2)).attr("y2", number(y2));
    }

    /** A rectangle, from its upper left corner. */
    public static Element rectangle(String style, double x, double y, double width, double height) {
        return new Element("rect").withClass(style).attr("x", number(x)).attr("y", number(y))
                .attr("width", number(width)).attr("height", number(height));
    }

    /** A circle, by its centre. */
    public static Element circle(String style, double x, double y, double radius) {
        return new Element("circle").withClass(style).attr("cx", number(x)).attr("cy", number(y))
                .attr("r", number(radius));
    }

    /** A line through points given as x, y, x, y … */
    public static Element polyline(String style, double... points) {
        return new Element("polyline").withClass(style).attr("points", points(points));
    }

    /** An area with corners given as x, y, x, y … */
    public static Element polygon(String style, double... points) {
        return new Element("polygon").withClass(style).attr("points", points(points));
    }

    /** @param anchor start, middle or end */
    public static Element text(String style, double x, double y, String anchor, String text) {
        return new Element("text").withClass(style).attr("x", number(x)).attr("y", number(y))
                .attr("text-anchor", anchor).withText(text);
    }

    /** Parts moved to a place and turned there, clockwise. */
    public static Element placed(double x, double y, double degrees, DomContent... parts) {
        return new Element("g").attr("transform", "translate(" + number(x) + " " + number(y) + ") rotate("
                + Figures.fixed(degrees, 3) + ")").with(parts);
    }

    private static String points(double... points) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < points.length; i += 2) {
            text.append(i == 0 ? "" : " ").append(number(points[i])).append(',').append(number(points[i + 1]));
        }
        return text.toString();
    }

    private static String number(double number) {
        String text = Figures.fixed(number, 1);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
