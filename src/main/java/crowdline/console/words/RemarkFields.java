package crowdline.console.words;

import crowdline.console.paint.PlainText;
import crowdline.console.paint.Script;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.console.words.WordsView.RemarkPage;
import crowdline.loaded.ShowLookup;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.plain.SpeechFinding;
import java.awt.Component;
import java.awt.ComponentOrientation;
import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.BadLocationException;
import javax.swing.text.JTextComponent;

/** The fields a remark is typed into. What is typed is told at every letter; showing a page tells nothing. */
final class RemarkFields {
    private static final String NOT_HERE = "not in this figure";

    final JComboBox<RemarkKind> kind = PlainText.plain(new JComboBox<>(RemarkKind.values()));
    final JCheckBox once = new JCheckBox("Once a day at most");
    final JTextArea text = area("What to say");
    final JTextArea shortText = area("Short form");
    final JTextField weight = field("Weight");
    final ChoiceBox at = new ChoiceBox("Moment it is tied to", "the start of the figure", NOT_HERE);
    final ChoiceBox until = new ChoiceBox("Moment by which it is over", "no moment", NOT_HERE);
    final ChoiceBox speaker = new ChoiceBox("Who says it", "whoever is at the console", "not among the speakers");
    final JTextField earliest = field("Earliest start, seconds from the start of the figure or from its moment");
    final JTextField latest = field("Latest end, seconds from the start of the figure or from its moment");
    final JTextField language = field("Other language, its code, such as fr");
    final ChoiceBox otherSpeaker =
            new ChoiceBox("Who says it in that language", "whoever says the remark", "not among the speakers");
    final JTextArea otherText = area("What to say in the other language");
    final JTextArea otherShort = area("Short form in the other language");
    private final Consumer<RemarkDraft> typed;
    private boolean showing;

    RemarkFields(Consumer<RemarkDraft> typed) {
        this.typed = typed;
        kind.getAccessibleContext().setAccessibleName("Kind of remark");
        kind.setRenderer(new Kinds());
        kind.addActionListener(e -> tell());
        once.addActionListener(e -> tell());
        at.addActionListener(e -> tell());
        until.addActionListener(e -> tell());
        speaker.addActionListener(e -> tell());
        otherSpeaker.addActionListener(e -> tell());
        for (JTextComponent each :
                new JTextComponent[] {text, shortText, weight, earliest, latest, language, otherText, otherShort}) {
            each.getDocument().addDocumentListener(new Told());
        }
    }

    void show(RemarkPage page) {
        showing = true;
        try {
            RemarkDraft draft = page.draft();
            kind.setSelectedItem(draft.kind());
            once.setSelected(draft.once());
            put(text, draft.text());
            put(shortText, draft.shortText());
            put(weight, draft.weight());
            at.show(draft.at(), page.moments());
            until.show(draft.until(), page.moments());
            speaker.show(draft.speaker(), page.speakers());
            speaker.note(page.notes());
            otherSpeaker.note(page.notes());
            put(language, draft.other().language());
            put(otherText, draft.other().text());
            put(otherShort, draft.other().shortText());
            otherSpeaker.show(draft.other().speaker(), page.speakers());
            turn();
            boolean ties = page.inFigure() && draft.kind() != RemarkKind.CALL;
            at.setEnabled(ties);
            until.setEnabled(ties);
            put(earliest, draft.earliestS());
            put(latest, draft.latestS());
            earliest.setEnabled(page.inFigure());
            latest.setEnabled(page.inFigure());
        } finally {
            showing = false;
        }
    }

    void enable(boolean enabled) {
        for (Component each : new Component[] {
            kind,
            once,
            text,
            shortText,
            weight,
            speaker,
            at,
            until,
            earliest,
            latest,
            language,
            otherText,
            otherShort,
            otherSpeaker
        }) {
            each.setEnabled(enabled);
        }
    }

    void underline(RemarkPage page, Appearance appearance) {
        text.getHighlighter().removeAllHighlights();
        FindingUnderline underline = new FindingUnderline(appearance.palette().caution());
        for (SpeechFinding finding : page.findings()) {
            try {
                text.getHighlighter().addHighlight(finding.fromChar(), finding.toChar(), underline);
            } catch (BadLocationException e) {
                // The text went on while it was judged; the next letter judges it anew.
                return;
            }
        }
    }

    void wear(Appearance appearance) {
        kind.setFont(appearance.plain(TextRole.BODY));
        once.setFont(appearance.plain(TextRole.BODY));
        at.setFont(appearance.plain(TextRole.BODY));
        speaker.setFont(appearance.plain(TextRole.BODY));
        otherSpeaker.setFont(appearance.plain(TextRole.BODY));
        otherText.setFont(appearance.plain(TextRole.SMALL));
        otherShort.setFont(appearance.plain(TextRole.SMALL));
        until.setFont(appearance.plain(TextRole.BODY));
        text.setFont(appearance.plain(TextRole.SMALL));
        shortText.setFont(appearance.plain(TextRole.SMALL));
        for (JTextField each : new JTextField[] {weight, earliest, latest, language}) {
            each.setFont(appearance.plain(TextRole.BODY));
        }
        for (JTextArea each : new JTextArea[] {text, shortText, otherText, otherShort}) {
            each.setBackground(appearance.palette().stage());
        }
    }

    private void tell() {
        if (showing || !(kind.getSelectedItem() instanceof RemarkKind chosen)) {
            return;
        }
        typed.accept(new RemarkDraft(
                chosen,
                text.getText(),
                shortText.getText(),
                weight.getText(),
                at.chosen(),
                until.chosen(),
                earliest.getText(),
                latest.getText(),
                once.isSelected(),
                speaker.chosen(),
                new OtherDraft(language.getText(), otherText.getText(), otherShort.getText(), otherSpeaker.chosen())));
        turn();
    }

    /** What is written from right to left begins at the right. */
    private void turn() {
        turn(otherText);
        turn(otherShort);
    }

    private static void turn(JTextArea area) {
        ComponentOrientation way = Script.isRightToLeft(area.getText())
                ? ComponentOrientation.RIGHT_TO_LEFT
                : ComponentOrientation.LEFT_TO_RIGHT;
        if (area.getComponentOrientation() != way) {
            area.setComponentOrientation(way);
        }
    }

    /** Leaves the caret alone where the text is the same. */
    private static void put(JTextComponent into, String next) {
        if (!into.getText().equals(next)) {
            int caret = into.getCaretPosition();
            into.setText(next);
            into.setCaretPosition(Math.min(caret, into.getDocument().getLength()));
        }
    }

    private static JTextArea area(String name) {
        JTextArea area = PlainText.plain(TextMenu.on(new JTextArea()));
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        // Tab goes on to the next field, as in every other.
        area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        area.getAccessibleContext().setAccessibleName(name);
        return area;
    }

    private static JTextField field(String name) {
        JTextField field = TextMenu.on(new JTextField(6));
        field.getAccessibleContext().setAccessibleName(name);
        return field;
    }

    private final class Told implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            tell();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            tell();
        }

        @Override
        public void changedUpdate(DocumentEvent event) {}
    }

    private static final class Kinds extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean cellHasFocus) {
            Object word = value instanceof RemarkKind kind ? ShowLookup.word(kind) : value;
            return super.getListCellRendererComponent(list, word, index, isSelected, cellHasFocus);
        }
    }
}
