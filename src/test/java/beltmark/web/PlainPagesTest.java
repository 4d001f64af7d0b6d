package beltmark.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Follows the links of each role from its start page and looks at every page it comes to. */
class PlainPagesTest {

    private static final int MOST_PAGES = 60;

    @TestFactory
    Stream<DynamicTest> everyPageIsPlain() {
        return Stream.of(
                        SampleSite.NEW_HIRE,
                        SampleSite.SUPERVISOR,
                        SampleSite.COORDINATOR,
                        SampleSite.TRAINER,
                        SampleSite.ADMIN)
                .map(name -> DynamicTest.dynamicTest(name, () -> walk(name)));
    }

    private static void walk(String name) {
        try (SampleSite site = SampleSite.start()) {
            Browser anonymous = site.browser();
            look(anonymous.get("/sign-in"));
            look(anonymous.get("/sign-in/" + site.crewId(name)));
            look(site.signIn(anonymous, name, "000000"));
            Browser browser = site.signIn(name);
            Set<String> seen = new LinkedHashSet<>(List.of("/today", "/settings", "/nothing"));
            for (int i = 0; i < Math.min(seen.size(), MOST_PAGES); i++) {
                Reply reply = browser.get(List.copyOf(seen).get(i));
                if (reply.header("Content-Type").startsWith("text/html")) {
                    look(reply);
                    reply.page().select("a[href^=/]").forEach(link -> seen.add(link.attr("href")));
                }
            }
        }
    }

    private static void look(Reply reply) {
        Document page = reply.page();
        String at = reply.path() + ": ";
        assertFalse(reply.status() >= 500, at + reply.status());
        assertEquals(
                "",
                page.select("script:not([src]), style, [style], a[href^=javascript:]")
                        .outerHtml(),
                at);
        assertEquals(1, page.select("h1").size(), at + "headings of the page");
        assertEquals("en", page.select("html").attr("lang"), at);
        for (Element element : page.getAllElements()) {
            element.attributes()
                    .forEach(attribute -> assertFalse(attribute.getKey().startsWith("on"), at + element));
        }
        for (Element field : page.select("input:not([type=hidden]), select, textarea")) {
            boolean named = !page.select("label[for=" + field.id() + "]").isEmpty()
                    || field.closest("label") != null
                    || field.hasAttr("aria-label");
            assertEquals(true, named, at + field);
        }
        for (Element form : page.select("form[method=post]")) {
            assertEquals(1, form.select("[name=csrf]").size(), at + form.attr("action"));
        }
        for (Element described : page.select("[aria-describedby], [aria-labelledby]")) {
            String ids = described.attr("aria-describedby") + " " + described.attr("aria-labelledby");
            for (String id : ids.strip().split("\\s+", -1)) {
                assertEquals(1, page.select("[id=" + id + "]").size(), at + id);
            }
        }
    }
}
