/**
 * What every page shares: who may use which route, sessions and their cookies, forms, rendering, error pages and the
 * headers of every response. Requests come in from Javalin, features get visitors and forms, pages go out.
 */
@NullMarked
package beltmark.web;

import org.jspecify.annotations.NullMarked;
