package beltmark.practice.pack;

import beltmark.web.Page;
import beltmark.web.View;

/**
 * One pack: its files, and who is on it.
 *
 * @param view what all pages share
 * @param pack the pack
 */
public record PackPage(View view, Pack pack) implements Page {}
