package beltmark.print;

import beltmark.web.Html;
import beltmark.web.Page;
import beltmark.web.TooBusy;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Makes PDF files of pages: with the shipped typeface, tagged for screen readers, and without any access to files or the
 * network, whatever the page may name.
 */
public final class Pdf {

    private static final String TYPEFACE = "DejaVu Sans";
    private static final int BOLD = 700;
    private static final int REGULAR = 400;

    /** Each takes a core and some tens of megabytes while it is made. */
    private static final int MOST_AT_ONCE = 2;

    private static final int LONGEST_WAIT_SECONDS = 10;

    private final Html html;
    private final StyleSheets styleSheets = new StyleSheets();
    private final Semaphore places = new Semaphore(MOST_AT_ONCE, true);

    /** @param html how pages become text */
    public Pdf(Html html) {
        XRLog.setLoggingEnabled(false);
        this.html = html;
    }

    /** {@return a page, made with the layout {@code print}, as a PDF file; throws {@link TooBusy} when many are wanted} */
    public byte[] of(Page page, Paper paper) {
        return ofHtml(html.render(page), paper);
    }

    /** {@return an HTML document as a PDF file} */
    byte[] ofHtml(String text, Paper paper) {
        Document document = Jsoup.parse(text);
        styleSheets.embed(document, paper);
        document.select("svg").forEach(Pdf::describe);
        takePlace();
        try {
            return render(W3CDom.convert(document));
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        } finally {
            places.release();
        }
    }

    /** A file has one text for a figure, where a page has two elements. */
    private static void describe(Element svg) {
        svg.attr("alt", String.join(" ", svg.select("> title, > desc").eachText()));
        svg.select("> title, > desc").remove();
    }

    private void takePlace() {
        try {
            if (!places.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
                throw new TooBusy("PDF files under way", new TimeoutException());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new TooBusy("PDF files under way", e);
        }
    }

    private static byte[] render(org.w3c.dom.Document document) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            new PdfRendererBuilder()
                    .useSVGDrawer(drawer)
                    .useUriResolver((base, uri) -> null)
                    .useExternalResourceAccessControl(
                            (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
                    .useExternalResourceAccessControl(
                            (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
                    .useFont(() -> font("DejaVuSans.ttf"), TYPEFACE, REGULAR, FontStyle.NORMAL, true)
                    .useFont(() -> font("DejaVuSans-Bold.ttf"), TYPEFACE, BOLD, FontStyle.NORMAL, true)
                    .usePdfUaAccessibility(true)
                    .withProducer("Beltmark")
                    .withW3cDocument(document, null)
                    .toStream(file)
                    .run();
        }
        return file.toByteArray();
    }

    private static InputStream font(String name) {
        return Objects.requireNonNull(Pdf.class.getResourceAsStream("/fonts/" + name), name);
    }
}
