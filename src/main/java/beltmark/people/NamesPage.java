package beltmark.people;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/** The second step of sign-in: who of the crew. */
public record NamesPage(View view, Crew crew, List<Person> people, NextPath next) implements Page {}
