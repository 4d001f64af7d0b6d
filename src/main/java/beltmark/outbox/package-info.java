/**
 * What the browser's outbox asks the server for: its service worker, a fresh form token with the person it belongs to, and
 * the page that is shown without network. The outbox itself is the scripts {@code outbox*.js}; what it sends are the forms
 * of the features, which know nothing of it.
 */
@NullMarked
package beltmark.outbox;

import org.jspecify.annotations.NullMarked;
