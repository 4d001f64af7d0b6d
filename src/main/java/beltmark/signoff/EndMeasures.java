package beltmark.signoff;

import beltmark.core.finish.Finish;
import beltmark.core.setup.AsLeft;
import beltmark.core.setup.SpringSetting;

/**
 * What was measured at the end.
 *
 * @param setting the spring setting for the blade, from the card's chart
 * @param asLeft marks, springs and sleeves
 * @param finish what was read at the blade
 */
public record EndMeasures(SpringSetting setting, AsLeft asLeft, Finish finish) {}
