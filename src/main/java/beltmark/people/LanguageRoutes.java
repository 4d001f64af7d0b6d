package beltmark.people;

import beltmark.texts.Language;
import beltmark.web.Cookies;
import beltmark.web.NotFound;
import beltmark.web.Role;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Set;

/** The language of the pages before sign-in; whoever is signed in has it in the settings. */
public final class LanguageRoutes {

    private final Set<Language> languages;
    private final Cookies cookies;

    /**
     * @param languages what can be chosen
     * @param cookies where the choice is kept
     */
    public LanguageRoutes(Set<Language> languages, Cookies cookies) {
        this.languages = languages;
        this.cookies = cookies;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        // a link and no form: it changes nothing but how this browser is spoken to
        routes.get("/language/{language}", this::choose, Role.ANYONE);
    }

    private void choose(Context ctx) {
        String asked = ctx.pathParam("language");
        if (languages.stream().noneMatch(language -> language.tag().equals(asked))) {
            throw new NotFound("language " + asked);
        }
        cookies.keepLanguage(ctx, asked);
        ctx.redirect(NextPath.ofAnyPage(ctx.queryParam("next")).value(), HttpStatus.SEE_OTHER);
    }
}
