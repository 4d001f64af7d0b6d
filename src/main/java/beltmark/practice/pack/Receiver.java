package beltmark.practice.pack;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;

/**
 * Somebody who can get a sheet.
 *
 * @param id the person's number
 * @param name as it is shown
 * @param crew the name of the crew
 * @param language the language of the sheet
 * @param graduation how the person reads lengths
 */
public record Receiver(long id, String name, String crew, Language language, Graduation graduation) {}
