package beltmark.signoff;

import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Tip;

/**
 * The hardware that was set up.
 *
 * @param card the hardware card
 * @param tip the tip on the blade
 */
public record Rig(HardwareCard card, Tip tip) {}
