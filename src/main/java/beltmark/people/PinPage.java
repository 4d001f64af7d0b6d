package beltmark.people;

import beltmark.web.Page;
import beltmark.web.View;

/** The third step of sign-in: the PIN. */
public record PinPage(View view, Person person, NextPath next, boolean refused) implements Page {}
