package beltmark.review.first;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.VectorGraphicsEncoder.VectorGraphicsFormat;
import org.knowm.xchart.internal.chartpart.Chart;

/**
 * Writes a chart as the inside of an SVG element. Text is written as outlines, so the reader needs no font. Styles become
 * attributes, because the pages allow no inline style; a tenth of a pixel is enough.
 */
final class Svg {

    /** The letters that are served with the printed pages. */
    static final Font FONT = font();

    private static final Pattern STYLE = Pattern.compile("style=\"([^\"]*)\"");
    private static final Pattern DECLARATION = Pattern.compile("([a-z-]+):([^;]*);");
    private static final Pattern DECIMALS = Pattern.compile("(\\.\\d)\\d+");
    private static final Pattern LINE_ENDS = Pattern.compile("\\s*\\R\\s*");

    private Svg() {}

    private static Font font() {
        try (InputStream letters =
                Objects.requireNonNull(Svg.class.getResourceAsStream("/fonts/DejaVuSans.ttf"), "font")) {
            return Font.createFont(Font.TRUETYPE_FONT, letters).deriveFont(13f);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the font cannot be read", e);
        }
    }

    /** {@return what belongs into an SVG element of the size of the chart} */
    static String of(Chart<?, ?> chart) {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try {
            VectorGraphicsEncoder.saveVectorGraphic(chart, written, VectorGraphicsFormat.SVG);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        String svg = written.toString(StandardCharsets.UTF_8);
        String inside = svg.substring(svg.indexOf('>', svg.indexOf("<svg")) + 1, svg.lastIndexOf("</svg>"));
        return LINE_ENDS
                .matcher(DECIMALS.matcher(withAttributes(inside)).replaceAll("$1"))
                .replaceAll("");
    }

    private static String withAttributes(String svg) {
        return STYLE.matcher(svg)
                .replaceAll(style -> Matcher.quoteReplacement(DECLARATION
                        .matcher(style.group(1))
                        .replaceAll("$1=\"$2\" ")
                        .strip()));
    }
}
