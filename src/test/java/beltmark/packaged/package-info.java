/**
 * Tests of the one runnable jar, from outside: its commands and its server as processes of their own, and its pages in a
 * real browser. They run after packaging; those named {@code …BrowserTest} need Chromium.
 */
@NullMarked
package beltmark.packaged;

import org.jspecify.annotations.NullMarked;
