package beltmark.ownrecord;

import beltmark.web.Download;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.List;

/** A person's own records as files. */
public final class OwnRecordRoutes {

    private static final String NAME = "my-record";

    private final OwnRecord ownRecord;
    private final Views views;

    public OwnRecordRoutes(OwnRecord ownRecord, Views views) {
        this.ownRecord = ownRecord;
        this.views = views;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/my-record.csv", ctx -> Download.csv(ctx, NAME, OwnRecordFile.csv(entries(ctx))), Role.SIGNED_IN);
        routes.get(
                "/my-record.json", ctx -> Download.json(ctx, NAME, OwnRecordFile.json(entries(ctx))), Role.SIGNED_IN);
    }

    private List<OwnEntry> entries(Context ctx) {
        return ownRecord.list(views.visitor(ctx).personId());
    }
}
