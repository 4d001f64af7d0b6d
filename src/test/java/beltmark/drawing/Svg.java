package beltmark.drawing;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** A drawing as the browser gets it: rendered with the real template and texts, and read back. */
public record Svg(String source, Element root) {

    /** How far apart the sheet's figures and the numbers may be: the rounding of two coordinates, in millimetres of paper. */
    public static final double ROUNDING = 0.0011;

    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "beltmark.jte");
    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);
    private static final Set<String> PLACES =
            Set.of("x", "y", "x1", "y1", "x2", "y2", "width", "height", "points", "d", "transform", "viewBox");

    /** A rectangle on the sheet. */
    public record Area(double left, double top, double right, double bottom) {

        /** {@return whether the two share any space} */
        public boolean overlaps(Area other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        /** {@return whether the other lies within this one} */
        public boolean holds(Area other) {
            return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
        }
    }

    /** {@return the rendered drawing} */
    public static Svg of(Drawing drawing) {
        StringOutput output = new StringOutput();
        ENGINE.render("part/drawing.jte", drawing, output);
        String source = output.toString();
        return new Svg(source, Jsoup.parse(source, Parser.xmlParser()).expectFirst("svg"));
    }

    /** {@return the English words of a person} */
    public static Words words(Graduation graduation) {
        return TEXTS.words(Language.EN, graduation);
    }

    /** {@return all text and all attributes but those that say where something is} */
    public List<String> told() {
        return root.select("*").stream()
                .flatMap(element -> Stream.concat(
                        Stream.of(element.tagName() + ":" + element.ownText()),
                        element.attributes().asList().stream()
                                .filter(attribute -> !PLACES.contains(attribute.getKey()))
                                .map(attribute -> attribute.getKey() + "=" + attribute.getValue())))
                .toList();
    }

    /** {@return the texts that are seen} */
    public List<String> texts() {
        return root.select("text").eachText();
    }

    /** {@return the millimetres of steel per millimetre of paper} */
    public double scale() {
        return Double.parseDouble(root.attr("data-scale"));
    }

    /** {@return a coordinate of an element} */
    public static double number(Element element, String attribute) {
        return Double.parseDouble(element.attr(attribute));
    }

    /** {@return the sheet} */
    public Area sheet() {
        double[] box = numbers(root.attr("viewBox"));
        return new Area(box[0], box[1], box[0] + box[2], box[1] + box[3]);
    }

    /** {@return the space each text takes up when set in a wide typeface} */
    public List<Area> textAreas() {
        double height = number(root, "font-size");
        return root.select("text").stream().map(text -> textArea(text, height)).toList();
    }

    private static Area textArea(Element text, double height) {
        double x = number(text, "x");
        double y = number(text, "y");
        boolean bold = text.hasClass("d-strong") || text.hasClass("d-number");
        double width = bold ? TextWidth.ofBold(text.text(), height) : TextWidth.of(text.text(), height);
        double before = switch (text.attr("text-anchor")) {
            case "end" -> width;
            case "middle" -> width / 2;
            default -> 0;
        };
        double up = height * 0.74;
        return text.hasAttr("transform")
                ? new Area(x - up, y - width + before, x, y + before)
                : new Area(x - before, y - up, x - before + width, y);
    }

    /** {@return the space each line, rectangle and outline takes up} */
    public List<Area> shapeAreas() {
        return Stream.of(
                        root.select("line").stream()
                                .map(line -> around(
                                        number(line, "x1"),
                                        number(line, "y1"),
                                        number(line, "x2"),
                                        number(line, "y2"))),
                        root.select("rect").stream().map(Svg::rectangle),
                        root.select("polygon, polyline").stream().map(line -> around(numbers(line.attr("points")))),
                        root.select("path").stream()
                                .map(path -> around(numbers(path.attr("d").replaceAll("[ML]", " ")))))
                .flatMap(areas -> areas)
                .toList();
    }

    private static Area rectangle(Element box) {
        double x = number(box, "x");
        double y = number(box, "y");
        return new Area(x, y, x + number(box, "width"), y + number(box, "height"));
    }

    private static Area around(double... xAndY) {
        return new Area(
                every(xAndY, 0).min().orElseThrow(),
                every(xAndY, 1).min().orElseThrow(),
                every(xAndY, 0).max().orElseThrow(),
                every(xAndY, 1).max().orElseThrow());
    }

    private static DoubleStream every(double[] xAndY, int offset) {
        return IntStream.range(0, xAndY.length / 2).mapToDouble(i -> xAndY[2 * i + offset]);
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.strip().split("[ ,]+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
