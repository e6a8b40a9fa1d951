package crowdline.console.glossary;

import crowdline.console.glossary.GlossaryView.EntryView;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.glossary.Explained;
import crowdline.glossary.Explained.Section;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One entry of the glossary, its texts large, under each other. */
final class EntryPage extends JScrollPane {
    private final Sheet sheet = new Sheet();
    private final transient Consumer<String> open;
    private transient @Nullable EntryView entry;
    private transient Appearance appearance;

    /** @param open opens the page of this name */
    EntryPage(Appearance appearance, Consumer<String> open) {
        this.appearance = appearance;
        this.open = open;
        setViewportView(sheet);
        setBorder(BorderFactory.createEmptyBorder());
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
        // A bar that comes and goes wraps the text anew, which may then fit without it.
        setVerticalScrollBarPolicy(VERTICAL_SCROLLBAR_ALWAYS);
        getAccessibleContext().setAccessibleName("The figure explained");
    }

    void show(EntryView next) {
        if (!next.equals(entry)) {
            entry = next;
            fill();
        }
    }

    /** Says that nothing has these words in it, and what to do. */
    void showNothingWith(String words, GlossaryView.Sift sift) {
        showNothing(
                "Nothing has “" + words + "” in it.",
                sift == GlossaryView.Sift.ALL
                        ? "Try fewer letters, or another word for it. You can also explain it in the show's own"
                                + " glossary."
                        : "Only some pages are being searched; Ctrl+K adds the others. Or try fewer letters.");
    }

    /** Says that nothing was found, and what to do, in place of a page. */
    void showNothing(String what, String whatToDo) {
        entry = null;
        sheet.removeAll();
        sheet.setLayout(new MigLayout("insets " + appearance.room(24) + ", fillx", "[0:0:,grow,fill]"));
        sheet.add(
                text(
                        "Nothing found",
                        what,
                        appearance.strong(TextRole.NEXT),
                        appearance.palette().text()),
                "wmin 0, wrap " + appearance.room(14));
        sheet.add(
                text(
                        "What to do",
                        whatToDo,
                        appearance.plain(TextRole.READ),
                        appearance.palette().text()),
                "wmin 0");
        settle();
    }

    void wear(Appearance worn) {
        appearance = worn;
        fill();
    }

    private void fill() {
        sheet.removeAll();
        sheet.setBackground(appearance.palette().stage());
        getViewport().setBackground(appearance.palette().stage());
        EntryView shown = entry;
        if (shown != null) {
            String inset = appearance.room(24);
            sheet.setLayout(new MigLayout(
                    "insets " + inset + ", fillx, gap " + appearance.room(24) + " " + appearance.room(4),
                    "[0:0:,grow,fill]"));
            sheet.add(
                    text(
                            shown.figure() ? "Figure" : "Word",
                            shown.name(),
                            appearance.strong(TextRole.NEXT),
                            appearance.palette().text()),
                    "wmin 0, wrap");
            if (!shown.others().isBlank()) {
                sheet.add(
                        text(
                                "Also called",
                                "also: " + shown.others(),
                                appearance.plain(TextRole.SMALL),
                                appearance.palette().soft()),
                        "wmin 0, wrap");
            }
            sheet.add(
                    text(
                            shown.figure() ? "Look for" : "What it is",
                            shown.lead(),
                            appearance.strong(TextRole.READ),
                            appearance.palette().text()),
                    "wmin 0, aligny top, wrap " + appearance.room(14));
            shown.sections().forEach(this::add);
            addLinks(shown);
            if (!shown.source().isBlank()) {
                add(new Section(Explained.SOURCE, shown.source()));
            }
        }
        settle();
    }

    private void add(Section section) {
        boolean aside = section.title().equals(Explained.SOURCE);
        sheet.add(title(section.title()), "spanx, wrap");
        sheet.add(
                text(
                        section.title(),
                        section.text(),
                        appearance.plain(aside ? TextRole.SMALL : TextRole.VALUE),
                        aside
                                ? appearance.palette().soft()
                                : appearance.palette().text()),
                "spanx, growx, wmin 0, wrap " + appearance.room(16));
    }

    /** What is named on this page and has a page of its own, each under its key. */
    private void addLinks(EntryView shown) {
        if (shown.links().isEmpty()) {
            return;
        }
        sheet.add(title("Named here"), "spanx, wrap");
        JPanel links = new JPanel(new MigLayout("insets 0, gap " + appearance.room(10) + " " + appearance.room(6)));
        links.setOpaque(false);
        int perRow = appearance.zoom().percent() > 140 ? 1 : 3;
        for (int i = 0; i < shown.links().size(); i++) {
            String name = shown.links().get(i);
            JButton link = PlainText.plain(new JButton("Alt+" + (i + 1) + "  " + name));
            link.setFont(appearance.plain(TextRole.SMALL));
            link.setFocusable(false);
            link.getAccessibleContext().setAccessibleName("Open " + name);
            link.addActionListener(e -> open.accept(name));
            links.add(link, i % perRow == perRow - 1 ? "wmin 0, wrap" : "wmin 0");
        }
        sheet.add(links, "spanx, growx, wmin 0, wrap " + appearance.room(16));
    }

    private JLabel title(String words) {
        JLabel title = PlainText.plain(new JLabel(words));
        title.setFont(appearance.strong(TextRole.SMALL));
        title.setForeground(appearance.palette().accent());
        return title;
    }

    /** Begins at the top. */
    private void settle() {
        sheet.setBackground(appearance.palette().stage());
        getViewport().setBackground(appearance.palette().stage());
        sheet.revalidate();
        sheet.repaint();
        getViewport().setViewPosition(new Point(0, 0));
    }

    private static JTextArea text(String name, String words, Font font, Color colour) {
        JTextArea area = PlainText.wrapped(name, words);
        area.setFont(font);
        area.setForeground(colour);
        return area;
    }

    /** As wide as its window, so that text wraps instead of running out. */
    private static final class Sheet extends JPanel implements Scrollable {
        /** Not for the caret of a text that nobody reads with the keys: each that is laid out would scroll to its end. */
        @Override
        public void scrollRectToVisible(Rectangle wanted) {
            Component reader =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            if (reader != null && SwingUtilities.isDescendingFrom(reader, this)) {
                super.scrollRectToVisible(wanted);
            }
        }

        @Override
        public java.awt.Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return Math.max(16, visible.height / 12);
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return orientation == SwingConstants.VERTICAL ? visible.height * 9 / 10 : visible.width;
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return false;
        }
    }
}
