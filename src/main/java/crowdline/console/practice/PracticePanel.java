package crowdline.console.practice;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.PlainText;
import crowdline.console.practice.PracticeHost.ActRow;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.practice.Level;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Asks what is to be practised: an act, how little the flight keeps to its plan, and which flight. */
public final class PracticePanel extends JPanel {
    private static final double ROW_PX = 44;
    private static final int MOST_PAST = 2;
    private static final String WHAT =
            "Live as on the day, with a flight that does not keep to the plan. Look at the sky"
                    + " and step the act with your keys. None of it reaches the day's show.";

    private final JList<ActRow> acts;
    private final JList<Level> levels = PlainText.plain(new JList<>(Level.values()));
    private final JTextField seed = TextMenu.on(new JTextField(6));
    private final JCheckBox apart =
            new JCheckBox("The sky in a window of its own, beside this one or on a second screen");
    private final JTextArea past = PlainText.wrapped("How it went before", "");
    private final JTextArea wrong = PlainText.wrapped("What is wrong", "");
    private final JButton start = new JButton("Start");
    private final transient Appearance appearance;
    private final transient PracticeHost host;
    private final transient Consumer<PracticeChoice> chosen;

    /**
     * @param before what was practised last, chosen again but for the flight
     * @param chosen told what is to be practised
     * @param spot told what is only to be watched
     */
    public PracticePanel(
            Appearance appearance,
            PracticeHost host,
            Optional<PracticeChoice> before,
            Consumer<PracticeChoice> chosen,
            Consumer<PracticeChoice> spot) {
        this.appearance = appearance;
        this.host = host;
        this.chosen = chosen;
        String gap = appearance.room(16);
        setLayout(new MigLayout(
                "insets " + gap + ", gap " + gap + " " + appearance.room(8),
                "[0:0:,grow 100,fill][0:0:,grow 125,fill]",
                "[][][0:0:,grow,fill][][][][]"));
        List<ActRow> rows = host.acts();
        acts = PlainText.plain(new JList<>(rows.toArray(ActRow[]::new)));
        list(acts, "Act");
        list(levels, "Level");
        acts.setCellRenderer(cells(ActRow::title));
        levels.setCellRenderer(cells(level -> level.number() + "  " + level.words()));
        int act = before.map(b -> rows.stream().map(ActRow::id).toList().indexOf(b.actId()))
                .orElse(0);
        acts.setSelectedIndex(Math.max(0, act));
        levels.setSelectedValue(before.map(PracticeChoice::level).orElse(Level.ONE), true);
        seed.setText(String.valueOf(before.map(b -> b.next().seed()).orElse(host.seed())));
        seed.setFont(appearance.plain(TextRole.BODY));
        seed.addActionListener(e -> start());
        seed.getAccessibleContext().setAccessibleName("Number of the flight");
        apart.setSelected(host.skyApart());
        apart.setFont(appearance.plain(TextRole.BODY));
        apart.setMnemonic('W');
        apart.registerKeyboardAction(e -> start(), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        start.setFont(appearance.strong(TextRole.BODY));
        start.addActionListener(e -> start());
        start.registerKeyboardAction(e -> start(), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        JButton watch = new JButton("Only watch: what did the pilot change?");
        watch.setMnemonic('O');
        watch.setFont(appearance.plain(TextRole.BODY));
        watch.addActionListener(e -> choose(spot));
        watch.registerKeyboardAction(e -> choose(spot), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        past.setFont(appearance.plain(TextRole.BODY));
        past.setFocusable(false);
        levels.addListSelectionListener(e -> tellPast());
        tellPast();
        wrong.setFont(appearance.strong(TextRole.BODY));
        wrong.setFocusable(false);
        JTextArea what = PlainText.wrapped("What it is", WHAT);
        what.setFont(appearance.plain(TextRole.BODY));
        what.setFocusable(false);
        add(what, "span, wmin 0, wrap " + appearance.room(12));
        add(label("Act", acts), "wmin 0");
        add(label("Level", levels), "wmin 0, wrap");
        add(scrolled(acts), "grow, wmin 0, hmin 0");
        add(scrolled(levels), "grow, wmin 0, hmin 0, wrap");
        add(past, "span, wmin 0, wrap");
        add(label("Flight number: the same number is the same flight again", seed), "span, split 2, growx 0, wmin 0");
        add(seed, "growx 0, wrap");
        add(apart, "span, wmin 0, wrap");
        add(start, "span, split 3, growx 0");
        add(watch, "growx 0");
        add(wrong, "wmin 0, growx");
        getAccessibleContext().setAccessibleName("Practice flight");
    }

    private <V> CellPainter<V> cells(Function<V, String> words) {
        return new CellPainter<>(appearance, ROW_PX, words, (pen, row, box, isChosen) -> {
            Box inner = box.inset(pen.px(8), pen.px(2));
            pen.midway(
                    pen.lines(words.apply(row), TextRole.BODY, false, inner, 2),
                    inner,
                    isChosen ? pen.palette().onChosen() : pen.palette().text());
        });
    }

    private static JScrollPane scrolled(JList<?> list) {
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    private void list(JList<?> list, String name) {
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setFont(appearance.plain(TextRole.BODY));
        list.getAccessibleContext().setAccessibleName(name);
        list.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "start");
        list.getActionMap().put("start", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                start();
            }
        });
    }

    private JLabel label(String words, Component of) {
        JLabel label = new JLabel(words);
        label.setFont(appearance.plain(TextRole.BODY));
        label.setLabelFor(of);
        return label;
    }

    /** As much of it as helps before the next flight. */
    private void tellPast() {
        Level level = levels.getSelectedValue();
        List<String> told = level == null ? List.of() : host.past(level);
        past.setText(
                level == null || told.isEmpty()
                        ? "No flight at this level yet."
                        : "Before, at this level:\n"
                                + told.stream().limit(MOST_PAST).collect(Collectors.joining("\n")));
    }

    private void start() {
        choose(chosen);
    }

    private void choose(Consumer<PracticeChoice> told) {
        ActRow act = acts.getSelectedValue();
        Level level = levels.getSelectedValue();
        long number;
        try {
            number = Long.parseLong(seed.getText().strip());
        } catch (NumberFormatException e) {
            number = 0;
        }
        if (number < 1 || number > PracticeChoice.MOST) {
            wrong.setText("The flight number is \"" + seed.getText().strip()
                    + "\"; it must be a whole number from 1 to " + PracticeChoice.MOST + ".");
            seed.requestFocusInWindow();
            return;
        }
        if (act != null && level != null) {
            host.keepSkyApart(apart.isSelected());
            told.accept(new PracticeChoice(act.id(), level, number));
        }
    }
}
