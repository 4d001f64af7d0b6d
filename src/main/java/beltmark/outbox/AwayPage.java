package beltmark.outbox;

import beltmark.web.Page;
import beltmark.web.View;

/**
 * There is no network and the page asked for is not kept on the device. The browser keeps this page for that case.
 *
 * @param view what all pages share
 */
public record AwayPage(View view) implements Page {}
