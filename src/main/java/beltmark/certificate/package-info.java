/**
 * Certificates of what the rules find: a sheet and a wallet card with a signed payload in a QR code, a page on which anybody
 * can look one up, and a check without the site by the published key. It says what the site's own rules found; it is no
 * certification of persons by an accredited body.
 */
@NullMarked
package beltmark.certificate;

import org.jspecify.annotations.NullMarked;
