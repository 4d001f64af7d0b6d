package beltmark.print;

import beltmark.content.ContentFile;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/**
 * Puts the style sheets into a document, so that it stands by itself when it reaches the renderer. Drawings get one of
 * their own, because the renderer draws SVG apart from the page round it.
 */
final class StyleSheets {

    private static final String FOLDER = "print";
    private static final String OF_DRAWINGS = "drawing.css";

    private final Map<String, String> byName =
            ContentFile.list(FOLDER).stream().collect(Collectors.toMap(ContentFile::name, ContentFile::text));

    void embed(Document document, Paper paper) {
        document.head().appendElement("style").appendChild(new DataNode(paper.css()));
        for (Element link : document.select("link[rel=stylesheet]")) {
            link.replaceWith(style(link.attr("href"), Parser.NamespaceHtml));
        }
        document.select("svg").forEach(svg -> svg.prependChild(style(OF_DRAWINGS, Parser.NamespaceSvg)));
    }

    private Element style(String name, String namespace) {
        String css = byName.get(name);
        if (css == null) {
            throw new IllegalStateException("there is no style sheet " + FOLDER + "/" + name);
        }
        return new Element("style", namespace).appendChild(new DataNode(css));
    }
}
