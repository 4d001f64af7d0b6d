package beltmark.web;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Makes the {@link View} of each request, once. */
public final class Views {

    private static final String VIEW = "beltmark.view";
    private static final String LOOKED_UP = "beltmark.session";

    private final Texts texts;
    private final Sessions sessions;
    private final Cookies cookies;
    private final Languages languages;
    private final FormTokens tokens;
    private final Assets assets;
    private final BooleanSupplier demo;

    /**
     * @param texts all texts
     * @param sessions who is behind a session
     * @param cookies where its token is
     * @param formKey the key of the form tokens
     * @param assets the static files
     * @param demo whether the site shows demo data
     */
    @SuppressWarnings("TooManyParameters") // the parts every page has; App names them once
    public Views(Texts texts, Sessions sessions, Cookies cookies, byte[] formKey, Assets assets, BooleanSupplier demo) {
        this.texts = texts;
        this.sessions = sessions;
        this.cookies = cookies;
        this.languages = new Languages(texts.languages(), cookies);
        this.tokens = new FormTokens(formKey);
        this.assets = assets;
        this.demo = demo;
    }

    /** {@return the view of this request} */
    public View of(Context ctx) {
        View made = ctx.attribute(VIEW);
        if (made != null) {
            return made;
        }
        Visitor visitor = findVisitor(ctx);
        Language language = visitor == null ? languages.of(ctx) : visitor.language();
        Graduation graduation = visitor == null ? Graduation.SIXTEENTH_INCH : visitor.graduation();
        View view = new View(
                texts.words(language, graduation),
                visitor,
                visitor == null ? languages.ways(ctx, language) : List.of(),
                tokens.of(cookies.binding(ctx)),
                demo.getAsBoolean(),
                assets::path);
        ctx.attribute(VIEW, view);
        return view;
    }

    /** {@return the signed-in person of a request that only signed-in people reach} */
    public Visitor visitor(Context ctx) {
        Visitor visitor = findVisitor(ctx);
        if (visitor == null) {
            throw new IllegalStateException(ctx.path() + " is open to people who are not signed in");
        }
        return visitor;
    }

    /** {@return the signed-in person, or null} */
    @Nullable
    Visitor findVisitor(Context ctx) {
        LookedUp known = ctx.attribute(LOOKED_UP);
        if (known == null) {
            String token = cookies.session(ctx);
            known = new LookedUp(
                    token == null || token.isEmpty()
                            ? null
                            : sessions.find(token).orElse(null));
            ctx.attribute(LOOKED_UP, known);
        }
        return known.visitor;
    }

    boolean ownForm(Context ctx, String token) {
        String binding = cookies.sentBinding(ctx);
        return !binding.isEmpty() && tokens.belongsTo(binding, token);
    }

    private record LookedUp(@Nullable Visitor visitor) {}
}
