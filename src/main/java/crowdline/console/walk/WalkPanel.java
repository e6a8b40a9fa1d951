package crowdline.console.walk;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import java.awt.Dimension;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** The Walk through place: what is flown at the left, what is said at the right, the act as a line under both. */
public final class WalkPanel extends JPanel {
    private static final double STRIP = 0.07;
    private static final double MIDDLE = 0.7;
    private static final double BAR = 0.15;
    /** What is flown has this share of the width. */
    private static final double FLYING = 0.56;
    /** The room the place was drawn for: a window of 1280 by 800 less its menu bar and caution line. */
    private static final double DESIGNED_WIDTH_PX = 1280;

    private static final double DESIGNED_HEIGHT_PX = 736;

    private final WalkStrip strip;
    private final FlyingBoard flying;
    private final SayingBoard saying;
    private final TimeBar bar;
    private final HintRow hint;
    private final JLabel noteLabel = PlainText.plain(new JLabel());
    private final JTextField note = TextMenu.on(new JTextField());
    private transient Appearance appearance;

    /**
     * @param pointed told the share of the act's line the mouse points at
     * @param written told a note when it is finished
     */
    public WalkPanel(Appearance appearance, DoubleConsumer pointed, Consumer<String> written) {
        super(null);
        this.appearance = appearance;
        strip = new WalkStrip(appearance);
        flying = new FlyingBoard(appearance);
        saying = new SayingBoard(appearance);
        bar = new TimeBar(appearance, pointed);
        hint = new HintRow(appearance);
        note.getAccessibleContext().setAccessibleName("Note on the figure; Enter keeps it, Esc cancels");
        note.addActionListener(e -> {
            String text = note.getText();
            closeNote();
            written.accept(text);
        });
        noteLabel.setLabelFor(note);
        noteLabel.setVisible(false);
        note.setVisible(false);
        add(strip);
        add(flying);
        add(saying);
        add(bar);
        add(noteLabel);
        add(note);
        add(hint);
        setPreferredSize(new Dimension((int) DESIGNED_WIDTH_PX, (int) DESIGNED_HEIGHT_PX));
        getAccessibleContext().setAccessibleName("Walk through");
    }

    /** Shows a view; parts that have not changed are not painted again. */
    public void show(WalkView view) {
        strip.show(view.top());
        flying.show(view.flying());
        saying.show(view.saying());
        bar.show(view.bar());
        hint.show(view.hint());
    }

    /** Opens the field for a note on a figure; nothing moves for it. */
    public void openNote(String figure, String text) {
        noteLabel.setText("Note on " + figure + " (Enter keeps it, Esc cancels)");
        note.setText(text);
        noteLabel.setVisible(true);
        note.setVisible(true);
        hint.setVisible(false);
        doLayout();
        note.requestFocusInWindow();
    }

    /** Goes on with the note where it was left. */
    public void takeFocus() {
        note.requestFocusInWindow();
    }

    /** Closes the field without keeping what is in it. */
    public void closeNote() {
        noteLabel.setVisible(false);
        note.setVisible(false);
        hint.setVisible(true);
    }

    /** Changes colours and sizes. */
    public void wear(Appearance worn) {
        appearance = worn;
        setBackground(worn.palette().ground());
        note.setFont(worn.plain(TextRole.SMALL));
        noteLabel.setFont(worn.plain(TextRole.BODY));
        noteLabel.setForeground(worn.palette().text());
        doLayout();
    }

    @Override
    public void doLayout() {
        int w = getWidth();
        int h = getHeight();
        int a = (int) Math.round(h * STRIP);
        int b = (int) Math.round(h * (STRIP + MIDDLE));
        int c = (int) Math.round(h * (STRIP + MIDDLE + BAR));
        int middle = (int) Math.round(w * FLYING);
        strip.setBounds(0, 0, w, a);
        flying.setBounds(0, a, middle, b - a);
        saying.setBounds(middle, a, w - middle, b - a);
        bar.setBounds(0, b, w, c - b);
        hint.setBounds(0, c, w, h - c);
        int edge = 20;
        int labelWidth = Math.min(w / 2, noteLabel.getPreferredSize().width);
        int fieldHeight = Math.min(h - c - 4, note.getPreferredSize().height);
        noteLabel.setBounds(edge, c, labelWidth, h - c);
        note.setBounds(
                edge + labelWidth + 12, c + (h - c - fieldHeight) / 2, w - labelWidth - 12 - 2 * edge, fieldHeight);
        double scale = Math.max(0.4, Math.min(w / DESIGNED_WIDTH_PX, h / DESIGNED_HEIGHT_PX));
        strip.wear(appearance, scale);
        flying.wear(appearance, scale);
        saying.wear(appearance, scale);
        bar.wear(appearance, scale);
        hint.wear(appearance, scale);
    }
}
