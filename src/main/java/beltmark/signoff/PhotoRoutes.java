package beltmark.signoff;

import beltmark.recordbook.StoredEntry;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import io.javalin.router.JavalinDefaultRoutingApi;
import jakarta.servlet.MultipartConfigElement;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The addresses of the photo of a signed record, for who signed it. */
public final class PhotoRoutes {

    private static final String PHOTO = "/sign-off/signed/{record}/photo";
    private static final int MOST_BYTES = 4 * 1024 * 1024;
    /** The other fields of the form come on top. */
    private static final long MOST_REQUEST_BYTES = MOST_BYTES + 16L * 1024;

    private final Signoff signoff;
    private final Photos photos;
    private final Views views;
    private final Html html;

    public PhotoRoutes(Signoff signoff, Photos photos, Views views, Html html) {
        this.signoff = signoff;
        this.photos = photos;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.before(PHOTO, this::allowFile);
        routes.get(PHOTO, this::show, Role.SUPERVISOR);
        routes.get(PHOTO + ".jpg", this::send, Role.SUPERVISOR);
        routes.post(PHOTO, this::add, Role.SUPERVISOR);
    }

    /** Nowhere else is so much taken, and from nobody who is not signed in; what is sent stays in memory. */
    private void allowFile(Context ctx) {
        if (ctx.isMultipartFormData() && views.of(ctx).visitor() != null) {
            ctx.req()
                    .setAttribute(
                            "org.eclipse.jetty.multipartConfig",
                            new MultipartConfigElement("", MOST_BYTES, MOST_REQUEST_BYTES, MOST_BYTES));
            refuseTooLarge(ctx);
        }
    }

    /** The HTTP layer only says that it failed; the gate behind this would take that for our own fault. */
    private static void refuseTooLarge(Context ctx) {
        try {
            ctx.formParamMap();
        } catch (Exception failed) {
            throw new ContentTooLargeResponse();
        }
    }

    private void show(Context ctx) {
        show(ctx, signed(ctx), false);
    }

    private void show(Context ctx, StoredEntry signed, boolean refused) {
        PhotoPage page = new PhotoPage(
                views.of(ctx), signed.sequence(), photos.find(signed).orElse(""), refused, OperationId.fresh());
        html.show(ctx, refused ? 422 : 200, page);
    }

    private void send(Context ctx) {
        byte[] photo = photos.read(signed(ctx)).orElseThrow(() -> new NotFound("no photo"));
        ctx.contentType("image/jpeg").result(photo);
    }

    private void add(Context ctx) {
        Form form = Form.of(ctx);
        OperationId operation = form.operation();
        StoredEntry signed = signed(ctx);
        byte[] sent = file(ctx);
        ctx.future(() -> photos.add(views.visitor(ctx), signed, sent, operation).thenAccept(taken -> {
            if (taken) {
                ctx.redirect("/sign-off/signed/" + signed.sequence() + "/photo", HttpStatus.SEE_OTHER);
            } else {
                show(ctx, signed, true);
            }
        }));
    }

    private StoredEntry signed(Context ctx) {
        return signoff.getSigned(views.visitor(ctx), Form.pathNumber(ctx, "record"));
    }

    private static byte[] file(Context ctx) {
        UploadedFile file = ctx.isMultipartFormData() ? ctx.uploadedFile("photo") : null;
        if (file == null) {
            return new byte[0];
        }
        try (InputStream content = file.content()) {
            return content.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
