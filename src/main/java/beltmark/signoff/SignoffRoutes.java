package beltmark.signoff;

import beltmark.recordbook.StoredEntry;
import beltmark.signoff.Signoff.Signature;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The addresses of sign-off: who, which hardware, the form, its check, the signature, and the record. */
public final class SignoffRoutes {

    private static final String ENTRY = "/sign-off/{person}/{card}/{tip}";

    private final Signoff signoff;
    private final Views views;
    private final Html html;

    public SignoffRoutes(Signoff signoff, Views views, Html html) {
        this.signoff = signoff;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/sign-off", this::fitters, Role.SUPERVISOR);
        routes.get("/sign-off/signed/{record}", this::signed, Role.SUPERVISOR);
        routes.get("/sign-off/{person}", this::rigs, Role.SUPERVISOR);
        routes.get(ENTRY, this::entry, Role.SUPERVISOR);
        routes.post(ENTRY, this::check, Role.SUPERVISOR);
        routes.post(ENTRY + "/sign", this::sign, Role.SUPERVISOR);
    }

    private void fitters(Context ctx) {
        Visitor visitor = views.visitor(ctx);
        html.show(
                ctx,
                new FittersPage(views.of(ctx), signoff.listFitters(visitor), signoff.listSigned(visitor), start(ctx)));
    }

    /** {@return where the form of a fitter is, below the fitter, when the address says for which hardware} */
    private String start(Context ctx) {
        Form address = Form.ofAddress(ctx);
        if (!address.has("card")) {
            return "";
        }
        Rig rig = signoff.getRig(address.text("card"), address.text("tip"));
        String carried = DemonstrationForm.carried(address).entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return "/" + rig.card().id() + "/" + rig.tip().id() + "?" + carried;
    }

    private void rigs(Context ctx) {
        Fitter fitter = fitter(ctx);
        if (!refuseSelf(ctx, fitter)) {
            html.show(ctx, new RigsPage(views.of(ctx), fitter, signoff.listRigs()));
        }
    }

    private void entry(Context ctx) {
        UnderWay underWay = underWay(ctx, OperationId.fresh());
        if (!refuseSelf(ctx, underWay.fitter())) {
            showEntry(ctx, 200, underWay, DemonstrationForm.started(Form.ofAddress(ctx), underWay.today()), Map.of());
        }
    }

    private void check(Context ctx) {
        Form sent = Form.of(ctx);
        UnderWay underWay = underWay(ctx, sent.operation());
        if (refuseSelf(ctx, underWay.fitter())) {
            return;
        }
        DemonstrationForm form = DemonstrationForm.of(sent, underWay.checklist());
        DemonstrationReading reading = read(ctx, underWay, form);
        reading.demonstration()
                .ifPresentOrElse(
                        shown -> showCheck(
                                ctx,
                                underWay,
                                form,
                                shown,
                                signoff.refusal(views.visitor(ctx), underWay.fitter(), shown)),
                        () -> showEntry(ctx, 422, underWay, form, reading.faults()));
    }

    private void sign(Context ctx) {
        Form sent = Form.of(ctx);
        UnderWay underWay = underWay(ctx, sent.operation());
        DemonstrationForm form = DemonstrationForm.of(sent, underWay.checklist());
        DemonstrationReading reading = read(ctx, underWay, form);
        Demonstration shown = reading.demonstration().orElse(null);
        if (shown == null) {
            showEntry(ctx, 422, underWay, form, reading.faults());
            return;
        }
        Visitor visitor = views.visitor(ctx);
        Signature signature = new Signature(
                sent.text("pin"),
                meaning(ctx, underWay, shown),
                underWay.operation(),
                FieldReader.time(sent.text("signed-at")));
        ctx.future(() -> signoff.sign(visitor, underWay.fitter().id(), shown, signature)
                .thenAccept(signing -> reply(ctx, underWay, form, shown, signing)));
    }

    private void reply(Context ctx, UnderWay underWay, DemonstrationForm form, Demonstration shown, Signing signing) {
        if (signing.refusal() == null) {
            ctx.redirect("/sign-off/signed/" + signing.record(), HttpStatus.SEE_OTHER);
        } else if (signing.refusal() == Refusal.SELF) {
            html.show(ctx, 403, new RefusedPage(views.of(ctx), Refusal.SELF));
        } else {
            showCheck(ctx, underWay, form, shown, signing.refusal());
        }
    }

    private void signed(Context ctx) {
        StoredEntry entry = signoff.getSigned(views.visitor(ctx), Form.pathNumber(ctx, "record"));
        html.show(ctx, new SignedPage(views.of(ctx), entry, entry.bodyAs(DemonstrationRecord.class)));
    }

    private void showEntry(
            Context ctx, int status, UnderWay underWay, DemonstrationForm form, Map<String, String> faults) {
        View view = views.of(ctx);
        EntryForm entry = new EntryForms(view, form, faults).entry(underWay, List.of());
        html.show(ctx, status, new EntryPage(view, underWay.fitter(), underWay.rig(), entry));
    }

    private void showCheck(
            Context ctx, UnderWay underWay, DemonstrationForm form, Demonstration shown, @Nullable Refusal refusal) {
        View view = views.of(ctx);
        EntryForm entry = new EntryForms(view, form, Map.of()).entry(underWay, shown.beyond());
        String meaning = meaning(ctx, underWay, shown).sentence();
        Basis basis = signoff.findBasis(views.visitor(ctx), shown).orElse(null);
        CheckPage page = new CheckPage(view, underWay.fitter(), shown, form, entry, meaning, basis, refusal);
        html.show(ctx, page.canSign() && refusal == null ? 200 : 422, page);
    }

    private boolean refuseSelf(Context ctx, Fitter fitter) {
        boolean self = fitter.id() == views.visitor(ctx).personId();
        if (self) {
            html.show(ctx, 403, new RefusedPage(views.of(ctx), Refusal.SELF));
        }
        return self;
    }

    private UnderWay underWay(Context ctx, OperationId operation) {
        return new UnderWay(
                fitter(ctx),
                signoff.getRig(ctx.pathParam("card"), ctx.pathParam("tip")),
                signoff.checklist(),
                signoff.today(),
                operation);
    }

    private Fitter fitter(Context ctx) {
        return signoff.getFitter(views.visitor(ctx), Form.pathNumber(ctx, "person"));
    }

    private DemonstrationReading read(Context ctx, UnderWay underWay, DemonstrationForm form) {
        return DemonstrationReading.of(
                form, underWay.rig(), underWay.checklist(), views.of(ctx).words(), underWay.today());
    }

    private Meaning meaning(Context ctx, UnderWay underWay, Demonstration shown) {
        return Meaning.of(
                views.of(ctx).words(),
                views.visitor(ctx).name(),
                underWay.fitter().name(),
                shown);
    }
}
