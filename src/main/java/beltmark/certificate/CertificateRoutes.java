package beltmark.certificate;

import beltmark.certificate.Certificates.Refusal;
import beltmark.print.Paper;
import beltmark.print.Pdf;
import beltmark.print.QrCode;
import beltmark.web.Download;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/** The certificates of a person: seen by the person, issued and revoked by those who look after them, printed by both. */
public final class CertificateRoutes {

    private static final int UNPROCESSABLE = 422;

    private final Certificates certificates;
    private final Pdf pdf;
    private final boolean tls;
    private final Views views;
    private final Html html;

    /**
     * @param certificates issues and revokes
     * @param pdf makes the files
     * @param tls whether browsers reach the server through TLS, as the printed address must then say
     * @param views what pages share
     * @param html how they are rendered
     */
    public CertificateRoutes(Certificates certificates, Pdf pdf, boolean tls, Views views, Html html) {
        this.certificates = certificates;
        this.pdf = pdf;
        this.tls = tls;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/certificate", this::showHolders, Role.SIGNED_IN);
        routes.get("/certificate/of/{person}", this::showHolder, Role.SIGNED_IN);
        routes.post("/certificate/of/{person}/{qualification}", this::issue, Role.SUPERVISOR, Role.COORDINATOR);
        routes.post("/certificate/{serial}/revoke", this::revoke, Role.SUPERVISOR, Role.COORDINATOR);
        routes.get("/certificate/{serial}/sheet.pdf", this::sendSheet, Role.SIGNED_IN);
        routes.get("/certificate/{serial}/card.pdf", this::sendCard, Role.SIGNED_IN);
    }

    private void showHolders(Context ctx) {
        Visitor visitor = views.visitor(ctx);
        List<Holder> holders = certificates.listHolders(visitor);
        if (holders.isEmpty()) {
            ctx.redirect("/certificate/of/" + visitor.personId(), HttpStatus.SEE_OTHER);
        } else {
            html.show(ctx, new HoldersPage(views.of(ctx), holders));
        }
    }

    private void showHolder(Context ctx) {
        html.show(ctx, page(ctx, Form.pathNumber(ctx, "person"), null));
    }

    private void issue(Context ctx) {
        long person = Form.pathNumber(ctx, "person");
        OperationId operation = Form.of(ctx).operation();
        reply(ctx, person, certificates.issue(views.visitor(ctx), person, ctx.pathParam("qualification"), operation));
    }

    private void revoke(Context ctx) {
        Form form = Form.of(ctx);
        Visitor visitor = views.visitor(ctx);
        String serial = serial(ctx);
        long person = certificates.get(visitor, serial).personId();
        reply(ctx, person, certificates.revoke(visitor, serial, form.text("reason"), form.operation()));
    }

    private void reply(Context ctx, long person, CompletableFuture<Optional<Refusal>> done) {
        ctx.future(() -> done.thenAccept(refusal -> {
            if (refusal.isPresent()) {
                html.show(ctx, UNPROCESSABLE, page(ctx, person, refusal.get()));
            } else {
                ctx.redirect("/certificate/of/" + person, HttpStatus.SEE_OTHER);
            }
        }));
    }

    private HolderPage page(Context ctx, long person, @Nullable Refusal refusal) {
        View view = views.of(ctx);
        Visitor visitor = views.visitor(ctx);
        Holder holder = certificates.getHolder(visitor, person);
        String refused = refusal == null ? null : view.text("certificate.refusal." + refusal.word());
        return new HolderPage(
                view,
                holder,
                certificates.listHeld(person),
                Certificates.mayIssue(visitor, holder),
                OperationId.fresh(),
                refused);
    }

    private void sendSheet(Context ctx) {
        Issued issued = certificates.get(views.visitor(ctx), serial(ctx));
        Paper paper = Paper.of(ctx.queryParam("paper"), views.visitor(ctx).graduation());
        SheetPage page = new SheetPage(views.of(ctx), payload(issued), code(ctx, issued), verifyAddress(ctx));
        Download.pdf(ctx, "certificate-" + issued.serial(), pdf.of(page, paper));
    }

    private void sendCard(Context ctx) {
        Issued issued = certificates.get(views.visitor(ctx), serial(ctx));
        CardPage page = new CardPage(views.of(ctx), payload(issued), code(ctx, issued), verifyAddress(ctx));
        Download.pdf(ctx, "card-" + issued.serial(), pdf.of(page, Paper.CARD));
    }

    private Payload payload(Issued issued) {
        return Token.open(issued.token(), certificates.verifyingKey())
                .orElseThrow(() -> new NotFound("certificate " + issued.serial() + " signed with the present key"));
    }

    private QrCode code(Context ctx, Issued issued) {
        return QrCode.of(verifyAddress(ctx) + "/" + issued.token());
    }

    /** The address under which the reader sees this site is where the code will lead. */
    private String verifyAddress(Context ctx) {
        return (tls ? "https://" : "http://") + ctx.host() + "/verify";
    }

    private static String serial(Context ctx) {
        return ctx.pathParam("serial");
    }
}
