package beltmark.signoff;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;

/**
 * The form that adds a photo to a signed record.
 *
 * @param view what all pages share
 * @param record the number of the signed record
 * @param sha256 the hash of the latest photo, empty when there is none
 * @param refused whether what was sent was no photo
 * @param operation names the next sending
 */
public record PhotoPage(View view, long record, String sha256, boolean refused, OperationId operation) implements Page {

    /** {@return where the form is sent, and found again} */
    public String path() {
        return "/sign-off/signed/" + record + "/photo";
    }
}
