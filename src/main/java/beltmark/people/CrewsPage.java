package beltmark.people;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/** The first step of sign-in: which crew. */
public record CrewsPage(View view, List<Crew> crews, NextPath next) implements Page {}
