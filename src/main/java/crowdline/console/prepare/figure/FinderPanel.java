package crowdline.console.prepare.figure;

import crowdline.console.keys.Clicked;
import crowdline.console.keys.KeyOn;
import crowdline.console.paint.EveryLetter;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Finds a figure by part of its name: what is typed, and what goes with it, the likeliest first. */
public final class FinderPanel extends JPanel {
    private static final String HOW =
            "Type part of a name or of what it is, such as “upside down”; Enter takes it, Esc leaves.";
    private static final String ANY =
            "Only times are known for this act, so any words will do; Enter takes them, Esc leaves.";

    private final Fields fields = new Fields();
    private final JTextField typed = fields.line("Which figure");
    private final JLabel title = PlainText.plain(new JLabel(" "));
    private final JTextArea how = PlainText.wrapped("How it is found", HOW);
    private final DefaultListModel<CatalogueEntry> found = new DefaultListModel<>();
    private final JList<CatalogueEntry> list = new JList<>(found);
    private final transient Supplier<PrepareHost> host;
    private transient FigureFinder finder;
    private transient Consumer<String> taken = name -> {};
    private final boolean isNarrow;
    private boolean any;

    /** @param isNarrow whether what is found stands below what is typed, and not beside it */
    public FinderPanel(Supplier<PrepareHost> host, boolean isNarrow) {
        this.host = host;
        this.isNarrow = isNarrow;
        finder = new FigureFinder(host.get().catalogue());
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setFocusable(false);
        list.getAccessibleContext().setAccessibleName("Figures that go with it");
        typed.getDocument().addDocumentListener(new EveryLetter(this::look));
        typed.addActionListener(e -> take());
        KeyOn.all(
                typed,
                Map.of(
                        "DOWN",
                        () -> step(1),
                        "UP",
                        () -> step(-1),
                        "PAGE_DOWN",
                        () -> step(5),
                        "PAGE_UP",
                        () -> step(-5)));
        list.addMouseListener(new Clicked(this::take));
    }

    /**
     * Asks for a figure.
     *
     * @param question such as "Add a figure after the loop"
     * @param anyWords whether something the catalogue does not have will do
     * @param answer told the name
     */
    public void ask(String question, boolean anyWords, List<CatalogueEntry> own, Consumer<String> answer) {
        finder = new FigureFinder(host.get().catalogue().with(own));
        any = anyWords;
        taken = answer;
        title.setText(question);
        how.setText(anyWords ? ANY : HOW);
        typed.setText("");
        look();
        typed.requestFocusInWindow();
    }

    private void look() {
        found.clear();
        found.addAll(finder.find(typed.getText()));
        if (!found.isEmpty() && !(any && !typed.getText().isBlank())) {
            list.setSelectedIndex(0);
            list.ensureIndexIsVisible(0);
        }
    }

    private void step(int by) {
        if (!found.isEmpty()) {
            int next = Math.max(0, Math.min(found.size() - 1, list.getSelectedIndex() + by));
            list.setSelectedIndex(next);
            list.ensureIndexIsVisible(next);
        }
    }

    private void take() {
        CatalogueEntry entry = list.getSelectedValue();
        if (entry != null) {
            taken.accept(entry.name());
        } else if (!typed.getText().isBlank()) {
            taken.accept(typed.getText().strip());
        }
    }

    public void wear(Appearance appearance) {
        removeAll();
        setLayout(new MigLayout(
                "insets 0, gap " + appearance.room(10) + " " + appearance.room(4),
                isNarrow ? "[0:0:,grow,fill]" : "[0:0:,grow 40,fill][0:0:,grow 60,fill]",
                isNarrow ? "[][0:0:,grow,fill]" : "[0:0:,grow,fill]"));
        fields.wear(appearance);
        title.setFont(appearance.strong(TextRole.BODY));
        how.setFocusable(false);
        how.setFont(appearance.plain(TextRole.LABEL));
        how.setForeground(appearance.palette().soft());
        list.setCellRenderer(FigureCells.found(appearance));
        list.setBackground(appearance.palette().stage());
        JPanel left =
                new JPanel(new MigLayout("insets 0, gap 0 " + appearance.room(4) + ", wrap 1", "[0:0:,grow,fill]"));
        left.add(title, "wmin 0");
        left.add(typed, "wmin 0");
        left.add(how, "wmin 0");
        add(left, "wmin 0, aligny top" + (isNarrow ? ", wrap" : ""));
        add(Scrolling.down(list), "grow, wmin 0, hmin 0");
        revalidate();
        repaint();
    }
}
