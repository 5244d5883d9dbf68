package stridetally.ingest;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes small workbooks, part by part, so that a test says exactly what lies in the file. */
final class MadeWorkbook {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";

    /** Cell styles by their place: general, date 14, h:mm 20, mm:ss 45, percent 9, three zeros 164. */
    static final int DATE = 1;

    static final int HOURS_MINUTES = 2;
    static final int MINUTES_SECONDS = 3;
    static final int PERCENT = 4;
    static final int ZEROS = 5;

    private final Map<String, String> sheets = new LinkedHashMap<>();
    private final List<String> hidden = new ArrayList<>();
    private boolean from1904;

    /** A sheet of rows; each cell as {@link #text}, {@link #number} or one of the others gives it, or blank. */
    MadeWorkbook sheet(String name, List<List<String>> rows) {
        StringBuilder xml = new StringBuilder(HEAD + "<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).isEmpty()) {
                continue;
            }
            xml.append("<row r=\"").append(row + 1).append("\">");
            for (int column = 0; column < rows.get(row).size(); column++) {
                String place = (char) ('A' + column) + Integer.toString(row + 1);
                xml.append(rows.get(row).get(column).replace("@", "r=\"" + place + "\""));
            }
            xml.append("</row>");
        }
        sheets.put(name, xml.append("</sheetData></worksheet>").toString());
        return this;
    }

    MadeWorkbook hiddenSheet(String name, List<List<String>> rows) {
        hidden.add(name);
        return sheet(name, rows);
    }

    MadeWorkbook from1904() {
        from1904 = true;
        return this;
    }

    static String text(String text) {
        return text.isEmpty()
                ? ""
                : "<c @ t=\"inlineStr\"><is><t>"
                        + text.replace("&", "&amp;").replace("<", "&lt;").replace("@", "&#64;") + "</t></is></c>";
    }

    static String number(String digits, int style) {
        return "<c @ s=\"" + style + "\"><v>" + digits + "</v></c>";
    }

    static String formula(String formula, String saved) {
        return "<c @><f>" + formula + "</f>" + (saved.isEmpty() ? "" : "<v>" + saved + "</v>") + "</c>";
    }

    static String error(String code) {
        return "<c @ t=\"e\"><v>" + code + "</v></c>";
    }

    static List<String> texts(String... cells) {
        return java.util.Arrays.stream(cells).map(MadeWorkbook::text).toList();
    }

    ByteSource source(String name) {
        return source(name, bytes());
    }

    static ByteSource source(String name, byte[] bytes) {
        return new ByteSource() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public long size() {
                return bytes.length;
            }

            @Override
            public InputStream open() {
                return new ByteArrayInputStream(bytes);
            }
        };
    }

    byte[] bytes() {
        Map<String, String> parts = new LinkedHashMap<>();
        StringBuilder types = new StringBuilder(HEAD + "<Types xmlns=\"" + PACKAGE + "content-types\">"
                + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                + "<Override PartName=\"/xl/workbook.xml\""
                + " ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                + "<Override PartName=\"/xl/styles.xml\""
                + " ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/>");
        StringBuilder book = new StringBuilder(HEAD + "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + OFFICE + "\">"
                + (from1904 ? "<workbookPr date1904=\"1\"/>" : "") + "<sheets>");
        StringBuilder links = new StringBuilder(HEAD + "<Relationships xmlns=\"" + PACKAGE + "relationships\">"
                + "<Relationship Id=\"rs\" Type=\"" + OFFICE + "/styles\" Target=\"styles.xml\"/>");
        int number = 0;
        for (Map.Entry<String, String> sheet : sheets.entrySet()) {
            number++;
            parts.put("xl/worksheets/sheet" + number + ".xml", sheet.getValue());
            types.append(
                    "<Override PartName=\"/xl/worksheets/sheet" + number
                            + ".xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>");
            book.append("<sheet name=\"" + sheet.getKey() + "\" sheetId=\"" + number + "\" r:id=\"r" + number + "\""
                    + (hidden.contains(sheet.getKey()) ? " state=\"hidden\"" : "") + "/>");
            links.append("<Relationship Id=\"r" + number + "\" Type=\"" + OFFICE
                    + "/worksheet\" Target=\"worksheets/sheet" + number + ".xml\"/>");
        }
        parts.put("[Content_Types].xml", types.append("</Types>").toString());
        parts.put("xl/workbook.xml", book.append("</sheets></workbook>").toString());
        parts.put("xl/_rels/workbook.xml.rels", links.append("</Relationships>").toString());
        parts.put(
                "_rels/.rels",
                HEAD + "<Relationships xmlns=\"" + PACKAGE + "relationships\"><Relationship Id=\"r0\" Type=\"" + OFFICE
                        + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
        parts.put(
                "xl/styles.xml",
                HEAD + "<styleSheet xmlns=\"" + MAIN + "\"><numFmts count=\"1\"><numFmt numFmtId=\"164\""
                        + " formatCode=\"000\"/></numFmts><cellXfs count=\"6\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/>"
                        + "<xf numFmtId=\"20\"/><xf numFmtId=\"45\"/><xf numFmtId=\"9\"/><xf numFmtId=\"164\"/></cellXfs>"
                        + "</styleSheet>");
        return zip(parts);
    }

    static byte[] zip(Map<String, String> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new java.io.UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }
}
