package beltmark.desk;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.Told;
import beltmark.web.View;
import java.util.List;

/**
 * A retraining order, and the form that closes it.
 *
 * @param view what all pages share
 * @param title the heading
 * @param address where closing is sent
 * @param told what the order says and what is on record since
 * @param open whether it can still be closed
 * @param watched whether a demonstration was signed since, so that no other observation is needed
 * @param form what was typed
 * @param missing sentences on what keeps it from being closed
 * @param operation for the form
 */
public record OrderPage(
        View view,
        String title,
        String address,
        List<Told> told,
        boolean open,
        boolean watched,
        ClosingForm form,
        List<String> missing,
        OperationId operation)
        implements Page {}
