package beltmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.units.Graduation;
import beltmark.drawing.Style;
import beltmark.web.Html;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What comes out is read by PDFBox: the library that writes the file, but through its reader. */
class PdfTest {

    private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

    private final Pdf pdf = new Pdf(new Html());

    @Test
    void textComesOutAsItWentIn() throws IOException {
        String text = text(html("<p>4 3/4 in ± 1/16 · ≤ 3° ✓ Señal «así» Łukasz Đặng</p>"));
        assertTrue(text.contains("4 3/4 in ± 1/16 · ≤ 3° ✓ Señal «así» Łukasz Đặng"), text);
    }

    @Test
    void fileNamesItsTitleAndLanguageAndIsTagged() throws IOException {
        try (PDDocument file = open(html("<p>x</p>"), Paper.A4)) {
            assertEquals("A & B", file.getDocumentInformation().getTitle());
            assertEquals("es", file.getDocumentCatalog().getLanguage());
            assertTrue(file.getDocumentCatalog().getMarkInfo().isMarked());
            assertNotNull(file.getDocumentCatalog().getStructureTreeRoot());
        }
    }

    @Test
    void sheetHasTheSizeAskedFor() throws IOException {
        assertSize(Paper.A4, 210, 297);
        assertSize(Paper.LETTER, 215.9, 279.4);
        assertSize(Paper.CARD, 85.6, 53.98);
    }

    private void assertSize(Paper paper, double width, double height) throws IOException {
        try (PDDocument file = open(html("<p>x</p>"), paper)) {
            PDRectangle sheet = file.getPage(0).getMediaBox();
            assertEquals(width, sheet.getWidth() * MILLIMETRES_PER_POINT, 0.1);
            assertEquals(height, sheet.getHeight() * MILLIMETRES_PER_POINT, 0.1);
        }
    }

    @Test
    void paperFollowsTheTapeUnlessChosen() {
        assertEquals(Paper.LETTER, Paper.of(null, Graduation.SIXTEENTH_INCH));
        assertEquals(Paper.A4, Paper.of(null, Graduation.MILLIMETRE));
        assertEquals(Paper.A4, Paper.of("a4", Graduation.SIXTEENTH_INCH));
        assertEquals(Paper.LETTER, Paper.of("letter", Graduation.MILLIMETRE));
        assertEquals(Paper.A4, Paper.of("card", Graduation.MILLIMETRE));
    }

    @Test
    void pagesAreCounted() throws IOException {
        String text = text(html("<p>first</p><p class=\"new-sheet\">second</p>"));
        assertTrue(text.contains("1 / 2"), text);
        assertTrue(text.contains("2 / 2"), text);
    }

    @Test
    void drawingIsDrawnWithItsStyles() throws IOException {
        String drawing = "<svg class=\"drawing\" viewBox=\"0 0 100 100\" fill=\"none\" font-size=\"9\">"
                + "<title>Belt</title><desc>Dark above.</desc><rect class=\"d-belt\" x=\"0\" y=\"0\" width=\"100\" height=\"50\"/>"
                + "<text class=\"d-text\" x=\"10\" y=\"80\">4 3/4</text></svg>";
        try (PDDocument file = open(html(drawing), Paper.A4)) {
            BufferedImage sheet = new PDFRenderer(file).renderImageWithDPI(0, 50);
            assertTrue(shareOfDark(sheet) > 0.1, "the belt fills half of the drawing with its dark");
        }
    }

    @Test
    void drawingIsDescribedToScreenReaders() throws IOException {
        String drawing =
                "<svg viewBox=\"0 0 9 9\"><title>Belt</title><desc>Dark above.</desc><path d=\"M0 0h9\"/></svg>";
        try (PDDocument file = open(html(drawing), Paper.A4)) {
            List<String> figures = new ArrayList<>();
            collectFigures(file.getDocumentCatalog().getStructureTreeRoot(), figures);
            assertEquals(List.of("Belt Dark above."), figures);
        }
    }

    private static void collectFigures(PDStructureNode node, List<String> alternatives) {
        if (node instanceof PDStructureElement element && "Figure".equals(element.getStructureType())) {
            alternatives.add(element.getAlternateDescription());
        }
        node.getKids().stream()
                .filter(PDStructureNode.class::isInstance)
                .forEach(kid -> collectFigures((PDStructureNode) kid, alternatives));
    }

    @Test
    void everyStyleOfADrawingIsKnownOnPaper() throws IOException {
        String css = Files.readString(Path.of("src/main/resources/print/drawing.css"), StandardCharsets.UTF_8);
        for (Style style : Style.values()) {
            assertTrue(css.matches("(?s).*\\." + style.css() + "[ ,].*"), style.css());
        }
    }

    @Test
    void neitherFilesNorTheNetworkAreReached(@TempDir Path folder) throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "secret words");
        Path picture = Files.writeString(
                folder.resolve("black.svg"),
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"500\" height=\"500\">"
                        + "<rect width=\"500\" height=\"500\"/></svg>");
        AtomicInteger asked = new AtomicInteger();
        try (Listener listener = Listener.start(asked)) {
            String page = html("<img alt=\"\" src=\"" + listener.address() + "\"><img alt=\"\" src=\"" + picture.toUri()
                    + "\"><object type=\"text/plain\" data=\"" + secret.toUri() + "\"></object>"
                    + "<svg viewBox=\"0 0 9 9\"><image href=\"" + picture.toUri()
                    + "\" width=\"9\" height=\"9\"/></svg>"
                    + "<div style=\"background: url(" + listener.address() + ")\">after</div>");
            try (PDDocument file = open(page, Paper.A4)) {
                String text = new PDFTextStripper().getText(file);
                assertTrue(text.contains("after"), text);
                assertFalse(text.contains("secret words"), text);
                assertTrue(shareOfDark(new PDFRenderer(file).renderImageWithDPI(0, 50)) < 0.02);
            }
        }
        assertEquals(0, asked.get(), "the network was asked");
    }

    private static double shareOfDark(BufferedImage image) {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        long dark = Arrays.stream(pixels).filter(pixel -> (pixel & 0xff) < 0x60).count();
        return (double) dark / pixels.length;
    }

    private String text(String html) throws IOException {
        try (PDDocument file = open(html, Paper.A4)) {
            return new PDFTextStripper().getText(file);
        }
    }

    private PDDocument open(String html, Paper paper) throws IOException {
        return Loader.loadPDF(pdf.ofHtml(html, paper));
    }

    private static String html(String content) {
        return "<!doctype html><html lang=\"es\"><head><meta charset=\"utf-8\"><title>A &amp; B</title>"
                + "<meta name=\"description\" content=\"d\"><link rel=\"stylesheet\" href=\"print.css\"></head>"
                + "<body><div class=\"foot\">foot</div><h1>A &amp; B</h1>" + content + "</body></html>";
    }
}
