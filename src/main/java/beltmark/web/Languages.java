package beltmark.web;

import beltmark.texts.Language;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The language before anybody is signed in: as chosen on this browser before, else as the browser asks, else English. */
final class Languages {

    private final Set<Language> offered;
    private final Cookies cookies;

    Languages(Set<Language> offered, Cookies cookies) {
        this.offered = offered;
        this.cookies = cookies;
    }

    Language of(Context ctx) {
        String chosen = cookies.language(ctx);
        return offered.stream()
                .filter(language -> language.tag().equals(chosen))
                .findFirst()
                .orElseGet(() -> asked(ctx.header("Accept-Language")));
    }

    private Language asked(@Nullable String header) {
        try {
            List<Locale.LanguageRange> ranges = Locale.LanguageRange.parse(header == null ? "" : header);
            String tag =
                    Locale.lookupTag(ranges, offered.stream().map(Language::tag).toList());
            return tag == null ? Language.EN : Language.ofTag(tag);
        } catch (IllegalArgumentException malformed) {
            return Language.EN;
        }
    }

    List<LanguageWay> ways(Context ctx, Language shown) {
        String query = ctx.queryString();
        String page = ctx.path() + (query == null ? "" : "?" + query);
        // what a form was sent to need not be a page
        String back =
                URLEncoder.encode(ctx.method().equals(HandlerType.GET) ? page : "/sign-in", StandardCharsets.UTF_8);
        return offered.stream()
                .map(language -> new LanguageWay(
                        language.tag(),
                        language.ownName(),
                        "/language/" + language.tag() + "?next=" + back,
                        language == shown))
                .toList();
    }
}
