package beltmark.people.staff;

import beltmark.web.Page;
import beltmark.web.View;

/**
 * Somebody is back.
 *
 * @param view what all pages share
 * @param member who
 * @param pin the PIN for the first sign-in, empty when it was told before
 */
public record BackPage(View view, StaffMember member, String pin) implements Page {}
