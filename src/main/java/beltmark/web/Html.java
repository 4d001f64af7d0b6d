package beltmark.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;

/** Renders pages with the templates that were compiled at build time. */
public final class Html {

    private static final String TEMPLATES = "beltmark.jte";
    private static final String SUFFIX = "Page";
    private static final int UNPROCESSABLE = 422;
    private static final int USUAL_PAGE = 16_384;

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);

    /** Answers with a page. */
    public void show(Context ctx, Page page) {
        show(ctx, 200, page);
    }

    /** Answers with a page and a status other than 200. */
    public void show(Context ctx, int status, Page page) {
        if (status == UNPROCESSABLE) {
            page.view().refuse();
        }
        ctx.status(status).contentType("text/html; charset=utf-8").result(render(page));
    }

    /** {@return a page as text, for what is not sent as a page} */
    public String render(Page page) {
        StringOutput output = new StringOutput(USUAL_PAGE);
        engine.render(template(page.getClass()), page, output);
        return output.toString();
    }

    /** {@return the template of a page class: the package below the root, and the name without {@code Page}} */
    static String template(Class<?> page) {
        String folder = page.getPackageName().substring("beltmark.".length()).replace('.', '/');
        String name = page.getSimpleName();
        String file = Character.toLowerCase(name.charAt(0)) + name.substring(1, name.length() - SUFFIX.length());
        return folder + "/" + file + ".jte";
    }
}
