package crowdline.console.debrief;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.NamedAction;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Which day is set beside this one: those flown lately first, then any file. */
final class DayChooser extends JPanel {
    private final JTextArea title = PlainText.wrapped(
            "What to do",
            "Which day beside this one? Enter takes it, Esc leaves it. A journal can also be dropped on the window.");
    private final DefaultListModel<Row> rows = new DefaultListModel<>();
    private final JList<Row> list = PlainText.plain(new JList<>(rows));
    private final transient Asked asked;

    /** What is asked for with it. */
    interface Asked {
        /** This day is to stand beside. */
        void beside(Path journal);

        /** No day is. */
        void alone();

        /** The file of a day is to be looked for. */
        void file();

        /** Nothing is to change. */
        void leave();
    }

    private record Row(String name, Runnable taken) {
        @Override
        public String toString() {
            return name;
        }
    }

    DayChooser(Appearance appearance, Asked asked) {
        this.asked = asked;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(PlainText.cells());
        list.getAccessibleContext().setAccessibleName("Days flown");
        on("ENTER", new NamedAction("Take the day", this::take));
        on("ESCAPE", new NamedAction("Leave it", asked::leave));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(@Nullable MouseEvent event) {
                if (event != null && event.getClickCount() == 2) {
                    take();
                }
            }
        });
        wear(appearance);
    }

    private void on(String key, NamedAction action) {
        list.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        list.getActionMap().put(key, action);
    }

    /** Offers these days. */
    void offer(List<DayChoice> days) {
        rows.clear();
        days.forEach(day -> rows.addElement(new Row(day.name(), () -> asked.beside(day.journal()))));
        rows.addElement(new Row("Another file…", asked::file));
        rows.addElement(new Row("This day alone", asked::alone));
        list.setSelectedIndex(0);
        list.requestFocusInWindow();
    }

    private void take() {
        Row chosen = list.getSelectedValue();
        if (chosen != null) {
            chosen.taken().run();
        }
    }

    void wear(Appearance worn) {
        removeAll();
        setLayout(new MigLayout("insets 0, gap 0px " + worn.room(8), "[0:0:,grow,fill]", "[][0:0:,grow,fill]"));
        setBackground(worn.palette().ground());
        title.setFont(worn.strong(TextRole.BODY));
        title.setForeground(worn.palette().text());
        list.setFont(worn.plain(TextRole.SMALL));
        list.setBackground(worn.palette().stage());
        add(title, "wmin 0, wrap");
        JScrollPane scroll = new JScrollPane(list);
        add(scroll, "grow, wmin 0, hmin 0");
        revalidate();
        repaint();
    }
}
