package crowdline.console.help;

import crowdline.console.paint.PlainText;
import crowdline.console.place.Place;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.Collections;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** A field to search in, the topics, and the one that is chosen. */
public final class HelpPanel extends JPanel {
    private static final String NOTHING =
            "Nothing here has those words. Try one of them alone, or the name of what you see on the screen.";

    private final transient HelpTopics topics;
    private final Place place;
    private final JTextField search = TextMenu.on(new JTextField());
    private final DefaultListModel<HelpTopic> model = new DefaultListModel<>();
    private final JList<HelpTopic> list = new JList<>(model);
    private final JTextArea title = PlainText.wrapped("Topic", "");
    private final JTextArea text = PlainText.wrapped("Explanation", "");

    /** @param place where it was asked for */
    public HelpPanel(Appearance appearance, HelpTopics topics, Place place) {
        super(new MigLayout(
                "insets " + appearance.room(16) + ", gap " + appearance.room(20) + " 0px",
                "[36%!][0:0:,grow,fill]",
                "[0:0:,grow,fill]"));
        this.topics = topics;
        this.place = place;
        setBackground(appearance.palette().stage());
        search.setFont(appearance.plain(TextRole.SMALL));
        search.putClientProperty("JTextField.placeholderText", "Search");
        search.putClientProperty("JTextField.showClearButton", true);
        search.getAccessibleContext().setAccessibleName("Search help");
        search.getDocument().addDocumentListener(new Refill());
        // Up and Down go through the topics from the field too, so that nobody has to leave it.
        moves(KeyEvent.VK_DOWN, 1);
        moves(KeyEvent.VK_UP, -1);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Topics");
        list.setFont(appearance.plain(TextRole.SMALL));
        list.setCellRenderer(new Cell(appearance));
        list.setBackground(appearance.palette().stage());
        list.addListSelectionListener(e -> explain(list.getSelectedValue()));
        title.setFont(appearance.strong(TextRole.VALUE));
        text.setFont(appearance.plain(TextRole.SMALL));
        JPanel left = new JPanel(
                new MigLayout("insets 0, gap 0px " + appearance.room(8), "[0:0:,grow,fill]", "[][0:0:,grow,fill]"));
        left.setOpaque(false);
        left.add(search, "wrap");
        left.add(scroll(list), "grow, hmin 0");
        JPanel page = new JPanel(
                new MigLayout("insets 0, gap 0px " + appearance.room(12), "[0:0:,grow,fill]", "[][0:0:,grow,fill]"));
        page.setOpaque(false);
        page.add(title, "wmin 0, wrap");
        page.add(scroll(text), "grow, hmin 0");
        add(left, "grow, wmin 0");
        add(page, "grow, wmin 0");
        getAccessibleContext().setAccessibleName("Help");
        refill();
    }

    private static JScrollPane scroll(Component inside) {
        JScrollPane scroll = new JScrollPane(inside);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        return scroll;
    }

    private void moves(int key, int by) {
        String name = "topic " + by;
        search.getInputMap().put(KeyStroke.getKeyStroke(key, 0), name);
        search.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                int to = Math.max(0, Math.min(model.size() - 1, list.getSelectedIndex() + by));
                list.setSelectedIndex(to);
                list.ensureIndexIsVisible(to);
            }
        });
    }

    /** What is shown, the chosen topic first of all. */
    public List<HelpTopic> shown() {
        return Collections.list(model.elements());
    }

    private void refill() {
        model.clear();
        topics.search(search.getText(), place).forEach(model::addElement);
        if (model.isEmpty()) {
            title.setText("Not found");
            text.setText(NOTHING);
        } else {
            list.setSelectedIndex(0);
        }
    }

    private void explain(@Nullable HelpTopic topic) {
        if (topic != null) {
            title.setText(topic.title());
            text.setText(String.join("\n\n", topic.paragraphs()));
            text.setCaretPosition(0);
        }
    }

    private final class Refill implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            SwingUtilities.invokeLater(HelpPanel.this::refill);
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            SwingUtilities.invokeLater(HelpPanel.this::refill);
        }

        @Override
        public void changedUpdate(DocumentEvent event) {}
    }

    private static final class Cell extends DefaultListCellRenderer {
        private final transient Appearance appearance;

        Cell(Appearance appearance) {
            this.appearance = appearance;
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean cellHasFocus) {
            super.getListCellRendererComponent(list, ((HelpTopic) value).title(), index, isSelected, cellHasFocus);
            setBorder(BorderFactory.createEmptyBorder(
                    appearance.px(6), appearance.px(8), appearance.px(6), appearance.px(8)));
            return this;
        }
    }
}
