package beltmark.certificate;

import beltmark.certificate.Certificates.Worth;
import beltmark.web.AddressLimit;
import beltmark.web.ClientAddress;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import org.jspecify.annotations.Nullable;

/** Looking up a certificate, for anybody, and the key to check one without this site. */
public final class VerifyRoutes {

    private final Certificates certificates;
    private final AddressLimit limit;
    private final ClientAddress address;
    private final Views views;
    private final Html html;

    /**
     * @param certificates what is on record
     * @param limit how often one address may look something up
     * @param address whom requests come from
     * @param views what pages share
     * @param html how they are rendered
     */
    public VerifyRoutes(Certificates certificates, AddressLimit limit, ClientAddress address, Views views, Html html) {
        this.certificates = certificates;
        this.limit = limit;
        this.address = address;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/verify", this::enter, Role.ANYONE);
        routes.get("/verify/{printed}", this::scan, Role.ANYONE);
        routes.get("/certificate/key", this::sendKey, Role.ANYONE);
    }

    /** The form sends what was entered in its address, so that nothing has to be signed in or stored for it. */
    private void enter(Context ctx) {
        Form form = Form.ofAddress(ctx);
        if (form.text("printed").isEmpty()) {
            show(ctx, "", null);
        } else {
            lookUp(ctx, form.text("printed"));
        }
    }

    private void scan(Context ctx) {
        lookUp(ctx, ctx.pathParam("printed"));
    }

    private void lookUp(Context ctx, String typed) {
        limit.take(address.of(ctx));
        show(ctx, typed, certificates.lookUp(Token.strip(typed)));
    }

    private void show(Context ctx, String typed, @Nullable Worth worth) {
        String keyId = certificates.verifyingKey().id();
        html.show(ctx, new VerifyPage(views.of(ctx), typed, worth, keyId));
    }

    private void sendKey(Context ctx) {
        ctx.contentType("application/x-pem-file")
                .header("Content-Disposition", "attachment; filename=\"beltmark-certificate-key.pem\"")
                .result(certificates.verifyingKey().pem());
    }
}
