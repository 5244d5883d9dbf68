package stridetally.report;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A drawing or page read strictly: what is not well formed fails the test. */
record Xml(Document document) {
    static Xml of(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            String noDoctype = text.replace("<!DOCTYPE html>\n", "");
            return new Xml(factory.newDocumentBuilder().parse(new InputSource(new StringReader(noDoctype))));
        } catch (ParserConfigurationException | SAXException | IOException cause) {
            throw new AssertionError(cause.getMessage() + "\n" + text, cause);
        }
    }

    List<Element> all(String... names) {
        List<String> wanted = List.of(names);
        return elements().stream()
                .filter(one -> wanted.contains(one.getTagName()))
                .toList();
    }

    List<Element> elements() {
        List<Element> found = new ArrayList<>();
        NodeList nodes = document.getElementsByTagName("*");
        for (int place = 0; place < nodes.getLength(); place++) {
            if (nodes.item(place) instanceof Element element) {
                found.add(element);
            }
        }
        return found;
    }

    /** Names of the elements in their order: the bones without the flesh. */
    String bones() {
        return elements().stream().map(Element::getTagName).collect(Collectors.joining(" "));
    }

    static List<Element> children(Element parent, String name) {
        List<Element> found = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element && element.getTagName().equals(name)) {
                found.add(element);
            }
        }
        return found;
    }
}
