package crowdline.console.prepare.duty;

import crowdline.console.keys.Command;
import crowdline.console.keys.KeyOn;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Choices;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.ContextMenu;
import crowdline.edit.day.AskedDuties;
import crowdline.edit.day.GapPieces;
import crowdline.live.now.Duties;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import java.awt.CardLayout;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** What must be said on the day, and what the gaps between acts are filled with. */
public final class DutiesPage extends JPanel implements PrepareCard {
    private static final String NO_ID = "";
    private static final String BEGIN = Command.ADD.key()
            + " adds what must be said on the day: who is to be thanked and how often, which gate is open"
            + " after which act. Live shows the list with U, and plans each when it is due.";

    private final Choices<Entry> entries =
            new Choices<>("Duties and pieces", e -> e.sort().name() + e.id(), Entry::words, this::chosen);
    private final ShowForm form;
    private final JTextField talk;
    private final ThingCard duty;
    private final ThingCard piece;
    private final JTextArea nothing = PlainText.wrapped("What to do first", BEGIN);
    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private final Fields buttons = new Fields();
    private final JButton morePieces = buttons.button("Add a piece for a gap");
    private final transient Tools tools;

    private enum Sort {
        NOTHING,
        DUTY,
        PIECE
    }

    /** A line of the list. */
    private record Entry(Sort sort, String id, String words) {}

    public DutiesPage(Tools tools) {
        this.tools = tools;
        form = new ShowForm(tools);
        talk = form.line(
                "Talk in gaps, % at most", show -> Numbers.text(show.gaps().talkPercent()), GapPieces::talk);
        duty = ThingCards.duty(tools, () -> id(Sort.DUTY));
        piece = ThingCards.piece(tools, () -> id(Sort.PIECE));
        stage.add(nothing, Sort.NOTHING.name());
        stage.add(duty, Sort.DUTY.name());
        stage.add(piece, Sort.PIECE.name());
        nothing.setFocusable(false);
        morePieces.setToolTipText("An interview, the story of an aircraft, how the next performer is introduced");
        morePieces.setMnemonic('G');
        morePieces.addActionListener(e -> addPiece());
        ContextMenu.on(entries.list(), tools.actions(), List.of(Command.ADD, Command.REMOVE));
        KeyOn.all(entries.list(), Map.of("ENTER", this::intoCard, "RIGHT", this::intoCard));
        getAccessibleContext().setAccessibleName("Duties");
    }

    private Sort sort() {
        return entries.chosen().map(Entry::sort).orElse(Sort.NOTHING);
    }

    private String id(Sort sort) {
        return entries.chosen().filter(e -> e.sort() == sort).map(Entry::id).orElse(NO_ID);
    }

    private void intoCard() {
        if (sort() == Sort.DUTY) {
            duty.takeFocus();
        } else if (sort() == Sort.PIECE) {
            piece.takeFocus();
        }
    }

    private void settle() {
        duty.settle();
        piece.settle();
    }

    private void chosen() {
        if (tools.editor().isOpen()) {
            settle();
            fill(tools.editor().now());
        }
    }

    @Override
    public void edited(Show show) {
        List<Entry> all = new ArrayList<>();
        Duties.in(show).forEach(r -> all.add(new Entry(Sort.DUTY, r.id(), line(r))));
        for (Piece each : show.gaps().pieces()) {
            all.add(new Entry(Sort.PIECE, each.id(), "▸ " + each.title()));
        }
        entries.show(all);
        fill(show);
    }

    private static String line(Remark duty) {
        return "● " + duty.dutyTimes().times() + " × " + duty.text();
    }

    private void fill(Show show) {
        form.show(show);
        cards.show(stage, sort().name());
        duty.edited(show);
        piece.edited(show);
    }

    /** Adds a duty, to be worded. */
    public void add() {
        settle();
        tools.editor().make(AskedDuties.add("What must be said."), show -> {
            List<Remark> all = show.remarks();
            entries.chooseNext(Sort.DUTY.name() + all.get(all.size() - 1).id());
            edited(show);
            duty.begin();
        });
    }

    private void addPiece() {
        if (tools.editor().isOpen()) {
            settle();
            tools.editor().make(GapPieces.add("New piece"), show -> {
                List<Piece> all = show.gaps().pieces();
                entries.chooseNext(Sort.PIECE.name() + all.get(all.size() - 1).id());
                edited(show);
                piece.begin();
            });
        }
    }

    public void remove() {
        if (sort() == Sort.DUTY) {
            tools.editor().make(AskedDuties.remove(id(Sort.DUTY)));
        } else if (sort() == Sort.PIECE) {
            tools.editor().make(GapPieces.remove(id(Sort.PIECE)));
        }
    }

    /** From the words back to the list; false if the focus is there already. */
    public boolean back() {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null
                && SwingUtilities.isDescendingFrom(owner, stage)
                && entries.list().requestFocusInWindow();
    }

    @Override
    public boolean takeFocus() {
        return entries.list().requestFocusInWindow();
    }

    @Override
    public void wear(Appearance worn) {
        removeAll();
        entries.wear(worn);
        buttons.wear(worn);
        form.wear(worn);
        nothing.setFont(worn.plain(TextRole.SMALL));
        nothing.setForeground(worn.palette().text());
        duty.wear(worn);
        piece.wear(worn);
        JPanel left = new JPanel(new MigLayout(
                "insets 0, gap 0 " + worn.room(8) + ", wrap 1", "[0:0:,grow,fill]", "[0:0:,grow,fill][][][]"));
        left.add(Scrolling.down(entries.list()), "grow, wmin 0, hmin 0");
        left.add(morePieces, "wmin 0");
        left.add(form.over(talk, "Talk in gaps, % at most"), "wmin 0");
        left.add(talk, "wmin 0");
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(16) + " 0",
                (Roomy.in(worn) ? "[32%!]" : "[40%!]") + "[0:0:,grow,fill]",
                "[0:0:,grow,fill]"));
        add(left, "grow, wmin 0, hmin 0");
        add(stage, "grow, wmin 0, hmin 0");
        form.wear(worn);
        revalidate();
        repaint();
    }
}
