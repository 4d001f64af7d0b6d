/**
 * What runs out: the list of the next 60 days, and a calendar for each crew that other programs fetch with a token. Where
 * people stand is judged by the core; stores here only the hashes of the tokens.
 */
@NullMarked
package beltmark.expiry;

import org.jspecify.annotations.NullMarked;
