package crowdline.console.paint;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.plaf.basic.BasicHTML;
import javax.swing.text.DefaultCaret;

/** Text from files shown as it is: never read as HTML, never editable where it is only shown. */
public final class PlainText {
    /** What stays on the line of its number, as a pattern. */
    static final String UNITS = "(?:s|min|h|kt|ft|hPa|°C|m|km|kg|g|mph|%)(?![A-Za-z])";

    private static final int TIP_PX = 400;

    private PlainText() {}

    /** Switches HTML off for a component that shows text from files. */
    public static <C extends JComponent> C plain(C component) {
        component.putClientProperty("html.disable", true);
        // What was set before, as by its constructor, may have been read already.
        component.putClientProperty(BasicHTML.propertyKey, null);
        return component;
    }

    /** A wrapped text that can be read by screen readers and copied, under an accessible name. */
    public static JTextArea wrapped(String name, String text) {
        JTextArea area = plain(new Words(text));
        area.setEditable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setOpaque(false);
        // One of its own: in place of none another theme would put its own border.
        area.setBorder(BorderFactory.createEmptyBorder());
        area.setCaret(still());
        area.getAccessibleContext().setAccessibleName(name);
        return area;
    }

    /** The keys pass it by while there is nothing to read in it. */
    private static final class Words extends JTextArea {
        Words(String text) {
            super(text);
        }

        @Override
        public boolean isFocusable() {
            return super.isFocusable() && getDocument() != null && getDocument().getLength() > 0;
        }
    }

    /** Of words that change by themselves: the place they stand in is not scrolled to them. */
    private static DefaultCaret still() {
        DefaultCaret caret = new DefaultCaret();
        caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        return caret;
    }

    /** A tooltip of words from a file in lines that fit a screen: they are no HTML, whatever they look like. */
    public static String tip(String text) {
        return "<html><div style='width:" + TIP_PX + "px'>"
                + text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;") + "</div>";
    }

    /** The same words with no line break between a number and its unit. */
    public static String unbroken(String text) {
        return text.replaceAll("(?<=[0-9]) (?=" + UNITS + ")", "\u00a0");
    }

    /** A renderer of list cells with HTML off. */
    public static DefaultListCellRenderer cells() {
        return new PlainCells();
    }

    private static final class PlainCells extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean cellHasFocus) {
            plain(this);
            return super.getListCellRendererComponent(list, value, index, isSelected, cellHasFocus);
        }
    }
}
