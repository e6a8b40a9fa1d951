package crowdline.console.prepare.list;

import crowdline.console.keys.KeyOn;
import crowdline.console.paint.EveryLetter;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.figure.FinderPanel;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.act.AddAct;
import crowdline.list.about.AboutAct;
import crowdline.list.about.SeveralActs;
import crowdline.list.about.WhatFlies;
import crowdline.list.line.FigureList;
import crowdline.list.line.Meaning;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.CatalogueEntry;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Takes the list a pilot sent, shows at every letter what is read in it, and makes an act of it when told to. */
public final class ListPage extends JPanel {
    private static final String READ = "READ";
    private static final String FINDER = "FINDER";
    private static final int LONGEST = 60;
    private static final String KEYS =
            "Enter names another figure, Delete leaves it out, Alt+↑ ↓ moves it, Ctrl+Z takes that back.";

    private final Fields fields = new Fields();
    private final JTextArea list = fields.area("The pilot's list", 10);
    private final JTextArea head = PlainText.wrapped("What was read", ListView.HOW);
    private final JTextArea keys = PlainText.wrapped("What the keys do in the lines read", KEYS);
    private final JTextArea wrong = PlainText.wrapped("What is wrong", "");
    private final ActForm form;
    private final JButton make = fields.button("Make the act   Ctrl+Enter");
    private final JButton leave = fields.button("Back   Esc");
    private final transient Supplier<PrepareHost> host;
    private final transient Runnable changed;
    private final transient Consumer<Added> made;
    private final transient ReadLines lines = new ReadLines(this::ask, this::say);
    private final FinderPanel finder;
    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private boolean isAsking;
    private transient InLetter in = new InLetter(Map.of());
    private transient @Nullable Show show;
    private transient @Nullable Show before;
    private transient Appearance appearance;

    /**
     * What is to be added.
     *
     * @param list null for an act of which only its length is known
     * @param minutes of its slot; null where they follow from the list
     */
    public record Added(
            @Nullable FigureList list,
            AddAct.Wanted wanted,
            @Nullable Double minutes) {}

    /**
     * @param made told what is to be made an act
     * @param back told when nothing is to be made
     */
    public ListPage(Appearance appearance, Tools tools, Consumer<Added> made, Runnable back) {
        this.appearance = appearance;
        host = tools.host();
        changed = tools.changed();
        this.made = made;
        list.putClientProperty("JTextArea.placeholderText", "loop, stall turn, slow roll …");
        list.getDocument().addDocumentListener(new EveryLetter(this::look));
        form = new ActForm(host, this::say);
        finder = new FinderPanel(host, true);
        head.setFocusable(false);
        keys.setFocusable(false);
        list.addCaretListener(e -> chooseAtCaret());
        // A new look and another size forget the marks.
        list.addPropertyChangeListener("UI", e -> mark());
        lines.list().addListSelectionListener(e -> mark());
        // Wherever the focus is: the menus would take it elsewhere.
        KeyOn.within(this, Map.of("alt L", lines::showLeftOut));
        make.addActionListener(e -> make());
        leave.addActionListener(e -> back.run());
        getAccessibleContext().setAccessibleName("Add an act from a list");
    }

    /**
     * Begins an act behind those of a show: with what was left here before it was made an act, or was again since that was
     * taken back, or else with nothing.
     */
    public void begin(Show now) {
        if (before != null && !before.equals(now)) {
            clear();
        }
        before = null;
        show = now;
        form.begin(now);
        look();
        list.requestFocusInWindow();
    }

    /**
     * What stands here has become an act: the next one begins with nothing, unless it was taken back.
     *
     * @param without the show before it
     */
    public void made(Show without) {
        before = without;
    }

    private void clear() {
        turn(false);
        lines.clear();
        list.setText("");
        form.clear();
    }

    public void put(String text) {
        list.setText(text);
    }

    public boolean takeFocus() {
        return list.requestFocusInWindow();
    }

    public boolean canMake() {
        return !isAsking && make.isEnabled();
    }

    /** Makes the act, if one can be made of what stands here. */
    public void make() {
        FigureList from = lines.corrected();
        if (!canMake()) {
            return;
        }
        boolean isListed = from != null && !list.getText().isBlank();
        // A second press makes no second act.
        make.setEnabled(false);
        wrong.setText("Making the act…");
        wrong.setForeground(appearance.palette().text());
        form.wanted()
                .ifPresent(wanted -> made.accept(
                        new Added(isListed ? from : null, wanted, form.minutes().orElse(null))));
    }

    private void look() {
        Show now = show;
        if (now != null) {
            host.get().read(now, list.getText(), this::found);
        }
    }

    private void found(FigureList found) {
        lines.read(found, form.isTimed());
        in = InLetter.of(list.getText(), found);
        form.offer(
                AboutAct.of(found),
                new WhatFlies(host.get().kinds()).in(found),
                !list.getText().isBlank());
        say();
    }

    /** Asks which figure a row is, among all there are. */
    private void ask(ListView.Row row) {
        turn(true);
        List<CatalogueEntry> own = Optional.ofNullable(show).map(Show::figures).orElse(List.of());
        finder.ask("What is “" + Written.brief(row.text(), LONGEST) + "”?", form.isTimed(), own, name -> {
            lines.mean(
                    row,
                    host.get().catalogue().with(own).find(name).isPresent()
                            ? new Meaning.Named(name)
                            : new Meaning.Own(name));
            back();
        });
    }

    /** Leaves the search for a figure; false if there is none. */
    public boolean back() {
        boolean wasAsking = isAsking;
        if (wasAsking) {
            turn(false);
            lines.list().requestFocusInWindow();
        }
        return wasAsking;
    }

    private void turn(boolean asking) {
        isAsking = asking;
        cards.show(stage, asking ? FINDER : READ);
        changed.run();
    }

    /** Goes to the row of what the caret stands in. */
    private void chooseAtCaret() {
        if (list.isFocusOwner()) {
            in.at(list.getCaretPosition()).ifPresent(lines::choose);
        }
    }

    private void mark() {
        LetterMarks.show(list, in, lines.view().rows(), lines.list().getSelectedIndex(), appearance.palette());
        ListView.Row row = lines.list().getSelectedValue();
        InLetter.Span span = row == null ? null : in.spans().get(row.key());
        if (span != null
                && lines.list().isFocusOwner()
                && span.to() <= list.getDocument().getLength()) {
            list.setCaretPosition(span.from());
        }
    }

    private void say() {
        lines.show(form.isTimed());
        mark();
        allow();
    }

    /** What was to be made an act cannot be: it can be tried again. */
    public void refused() {
        allow();
    }

    /** Says what is still missing where only a field is empty. */
    private void allow() {
        boolean isListed = !list.getText().isBlank();
        ListView view = lines.view();
        boolean isUsable = view.isUsable() || !isListed;
        String missing = !isUsable ? "" : form.missing(isListed);
        head.setText(view.head());
        boolean isMissing = !missing.isEmpty() && isUsable;
        String several = view.isUsable() ? SeveralActs.said(list.getText()) : "";
        wrong.setText(isMissing ? missing : several.isEmpty() ? view.wrong() : several);
        wrong.setForeground(
                isMissing ? appearance.palette().text() : appearance.palette().caution());
        make.setEnabled(isUsable && missing.isEmpty());
        changed.run();
    }

    public void wear(Appearance worn) {
        appearance = worn;
        removeAll();
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(12) + " " + worn.room(4),
                "[0:0:,grow 42,fill][0:0:,grow 58,fill]",
                "[0:0:,grow,fill]" + worn.room(8) + "[][]"));
        fields.wear(worn);
        lines.list().setCellRenderer(ReadCells.read(worn));
        lines.list().setBackground(worn.palette().stage());
        head.setFont(worn.plain(TextRole.BODY));
        wrong.setFont(worn.strong(TextRole.BODY));
        keys.setFont(worn.plain(TextRole.LABEL));
        keys.setForeground(worn.palette().soft());
        JPanel read = new JPanel(new BorderLayout(0, worn.px(4)));
        read.add(head, BorderLayout.NORTH);
        read.add(Scrolling.down(lines.list()), BorderLayout.CENTER);
        read.add(keys, BorderLayout.SOUTH);
        finder.wear(worn);
        stage.removeAll();
        stage.add(read, READ);
        stage.add(finder, FINDER);
        JPanel letter = new JPanel(new BorderLayout(0, worn.px(4)));
        letter.add(fields.over(list, "The pilot's list"), BorderLayout.NORTH);
        letter.add(Scrolling.down(list), BorderLayout.CENTER);
        add(letter, "grow, wmin 0, hmin 0");
        add(stage, "grow, wmin 0, hmin 0, wrap");
        turn(isAsking);
        form.wear(worn);
        add(form, "spanx, growx, wmin 0, wrap");
        add(wrong, "spanx, split 3, growx, wmin 0");
        add(leave, "growx 0, wmin pref");
        add(make, "growx 0, wmin pref");
        mark();
        allow();
        revalidate();
        repaint();
    }
}
