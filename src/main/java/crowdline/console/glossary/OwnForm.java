package crowdline.console.glossary;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.show.Term;
import crowdline.show.catalogue.CatalogueEntry;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Where a word or a figure is explained in a show's own words. Tab goes from box to box, Ctrl+Enter keeps, Esc leaves. */
final class OwnForm extends JPanel {
    private static final String NAME = "What it is called";
    private static final String ALSO = "Also called, with semicolons between";
    private static final String WHAT = "What it is";
    private static final String SHOW = "At the show";
    private static final String SAY = "Say it";
    private static final String SOURCE = "Where this comes from";
    private static final String LOOK = "Look for";
    private static final String HARD = "Why it is hard";
    private static final String HANDS = "Hands and feet";
    private static final String FEELS = "What the pilot feels";
    private static final String MIXED = "Easily mixed up with";

    /** Boxes of one line; the others grow. */
    private static final Set<String> SHORT = Set.of(NAME, ALSO, SAY, SOURCE);

    private final Map<String, JTextArea> boxes = new LinkedHashMap<>();
    private final JLabel title = PlainText.plain(new JLabel());
    private final JTextArea refused = PlainText.wrapped("What is missing", "");
    private final JButton keep = PlainText.plain(new JButton("Keep (Ctrl+Enter)"));
    private final JButton leave = PlainText.plain(new JButton("Leave (Esc)"));
    private transient Appearance appearance;
    private transient @Nullable CatalogueEntry figure;
    private transient @Nullable Term term;
    private transient Runnable back = () -> {};

    /**
     * @param kept told when it is to be kept
     * @param left told when it is left
     */
    OwnForm(Appearance appearance, Runnable kept, Runnable left) {
        this.appearance = appearance;
        keep.addActionListener(e -> kept.run());
        leave.addActionListener(e -> left.run());
        getActionMap().put("leave", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                left.run();
            }
        });
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "leave");
        refused.setVisible(false);
        getAccessibleContext().setAccessibleName("In the show's own words");
    }

    /**
     * Opens it for a word.
     *
     * @param known the word as the show explains it, or null for a new one
     * @param called what a new one is called, as far as that is known
     */
    void word(@Nullable Term known, String called) {
        figure = null;
        term = known;
        Term shown = known == null ? null : known;
        fill(known == null ? "A word of your own" : known.name(), values(shown, called));
    }

    /**
     * Opens it for a word that is not in the list.
     *
     * @param called what it is called, as far as that is known
     * @param then done once, when the form is left
     */
    void newWord(String called, Runnable then) {
        word(null, called);
        back = then;
    }

    /** Goes on where whoever opened it came from. */
    void back() {
        Runnable then = back;
        back = () -> {};
        then.run();
    }

    private static Map<String, String> values(@Nullable Term known, String called) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put(NAME, known == null ? called : known.name());
        values.put(WHAT, known == null ? "" : known.whatItIs());
        values.put(ALSO, known == null ? "" : String.join("; ", known.aliases()));
        values.put(SHOW, known == null ? "" : known.atTheShow());
        values.put(SAY, known == null ? "" : known.sayIt());
        values.put(SOURCE, known == null ? "" : Objects.requireNonNullElse(known.source(), ""));
        return values;
    }

    /** Opens it for a figure, with the words there are. */
    void figure(CatalogueEntry known) {
        figure = known;
        term = null;
        Map<String, String> values = new LinkedHashMap<>();
        values.put(LOOK, known.lookFor());
        values.put(WHAT, known.whatItIs());
        values.put(HARD, known.whyHard());
        values.put(HANDS, known.handsAndFeet());
        values.put(FEELS, known.pilotFeels());
        values.put(MIXED, known.mixUps());
        values.put(SAY, known.sayIt());
        fill(known.name() + ", in your own words", values);
    }

    private void fill(String heading, Map<String, String> values) {
        title.setText(heading);
        boxes.clear();
        values.forEach((label, value) -> {
            JTextArea box = TextMenu.on(new JTextArea(value));
            box.setLineWrap(true);
            box.setWrapStyleWord(true);
            box.getAccessibleContext().setAccessibleName(label);
            // Tab leaves a box; nobody explains anything with tabs.
            box.setFocusTraversalKeys(
                    KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("TAB")));
            box.setFocusTraversalKeys(
                    KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("shift TAB")));
            boxes.put(label, box);
        });
        refuse("");
        wear(appearance);
    }

    /** Puts the cursor where one begins to write. */
    void takeFocus() {
        boxes.values().stream()
                .filter(box -> box.getText().isBlank())
                .findFirst()
                .or(() -> boxes.values().stream().findFirst())
                .ifPresent(Component::requestFocusInWindow);
    }

    /** Says why it cannot be kept. */
    void refuse(String why) {
        refused.setText(why);
        refused.setVisible(!why.isEmpty());
        revalidate();
    }

    /** The figure being explained, with the words as written; null if it is a word. */
    @Nullable
    CatalogueEntry figure() {
        CatalogueEntry known = figure;
        return known == null
                ? null
                : new CatalogueEntry(
                        known.name(),
                        known.aliases(),
                        known.family(),
                        text(WHAT),
                        text(LOOK),
                        text(HARD),
                        text(HANDS),
                        text(FEELS),
                        text(MIXED),
                        text(SAY),
                        null,
                        known.minEntryKt(),
                        known.enters(),
                        known.elements());
    }

    /** What the word was called until now; null for a new one. */
    @Nullable
    String calledBefore() {
        Term known = term;
        return known == null ? null : known.name();
    }

    /**
     * The word as written.
     *
     * @throws IllegalArgumentException if something is missing or too long, with what
     */
    Term term() {
        Term known = term;
        String source = text(SOURCE);
        return new Term(
                text(NAME),
                Arrays.stream(text(ALSO).split(";", -1))
                        .map(String::strip)
                        .filter(s -> !s.isEmpty())
                        .toList(),
                known == null ? Term.OWN_GROUP : known.group(),
                text(WHAT),
                text(SHOW),
                text(SAY),
                known == null ? List.of() : known.see(),
                source.isEmpty() ? null : source);
    }

    private String text(String label) {
        JTextArea box = boxes.get(label);
        return box == null ? "" : box.getText().replaceAll("\\s+", " ").strip();
    }

    void wear(Appearance worn) {
        appearance = worn;
        removeAll();
        setBackground(worn.palette().stage());
        setLayout(new MigLayout(
                "insets " + worn.room(24) + ", hidemode 3, gap 0px " + worn.room(8),
                "[0:0:,grow,fill]",
                "[][0:0:,grow,fill][][]"));
        title.setFont(worn.strong(TextRole.NEXT));
        title.setForeground(worn.palette().text());
        refused.setFont(worn.plain(TextRole.SMALL));
        refused.setForeground(worn.palette().alarm());
        JPanel form = new JPanel(new MigLayout("insets 0, fillx, gap 0px " + worn.room(4), "[0:0:,grow,fill]"));
        form.setOpaque(false);
        boxes.forEach((label, box) -> {
            JLabel over = PlainText.plain(new JLabel(label, SwingConstants.LEADING));
            over.setFont(worn.strong(TextRole.SMALL));
            over.setForeground(worn.palette().accent());
            over.setLabelFor(box);
            box.setFont(worn.plain(TextRole.SMALL));
            box.setRows(SHORT.contains(label) ? 1 : 3);
            form.add(over, "wmin 0, wrap");
            form.add(new JScrollPane(box), "growx, wmin 0, wrap " + worn.room(8));
        });
        JScrollPane scroll = new JScrollPane(form);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getViewport().setBackground(worn.palette().stage());
        JPanel row = new JPanel(new MigLayout("insets 0, gap " + worn.room(10)));
        row.setOpaque(false);
        keep.setFont(worn.plain(TextRole.SMALL));
        leave.setFont(worn.plain(TextRole.SMALL));
        row.add(keep);
        row.add(leave);
        add(title, "wmin 0, wrap");
        add(scroll, "grow, wmin 0, hmin 0, wrap");
        add(refused, "growx, wmin 0, wrap");
        add(row);
        revalidate();
        repaint();
    }
}
