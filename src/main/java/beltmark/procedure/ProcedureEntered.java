package beltmark.procedure;

import beltmark.core.procedure.ProcedureCard;

/**
 * Body of the records {@code procedure.entered} and {@code procedure.changed}.
 *
 * @param card the version as it stands from now on
 * @param reason what was changed and why; empty for the first version
 */
record ProcedureEntered(ProcedureCard card, String reason) {}
