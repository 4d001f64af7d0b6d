package beltmark.web;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;

/** Answers with a file to be kept instead of a page to be shown. */
public final class Download {

    private Download() {}

    /**
     * Answers with a PDF file.
     *
     * @param name what the file is called, without its ending; anything but letters and digits becomes a hyphen
     * @param file what is in it
     */
    public static void pdf(Context ctx, String name, byte[] file) {
        send(ctx, "application/pdf", safe(name) + ".pdf").result(file);
    }

    /** Answers with rows after RFC 4180. */
    public static void csv(Context ctx, String name, String file) {
        send(ctx, "text/csv; charset=utf-8; header=present", safe(name) + ".csv")
                .result(file.getBytes(StandardCharsets.UTF_8));
    }

    /** Answers with JSON. */
    public static void json(Context ctx, String name, String file) {
        send(ctx, "application/json", safe(name) + ".json").result(file.getBytes(StandardCharsets.UTF_8));
    }

    private static Context send(Context ctx, String type, String name) {
        return ctx.contentType(type).header("Content-Disposition", "attachment; filename=\"" + name + "\"");
    }

    private static String safe(String name) {
        return name.replaceAll("[^A-Za-z0-9]+", "-");
    }
}
