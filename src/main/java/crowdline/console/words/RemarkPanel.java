package crowdline.console.words;

import crowdline.console.paint.Form;
import crowdline.console.paint.InnerScroll;
import crowdline.console.paint.Mark;
import crowdline.console.paint.MarkLine;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.console.words.WordsView.RemarkPage;
import crowdline.speech.plain.SpeechFinding;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The page of the remark being written: its fields, what will be said, the time there is, what listeners may not follow. */
final class RemarkPanel extends JPanel {
    /** From this zoom on fields take lines of their own; tuned for a window 1280 wide. */
    private static final double ROOMY_ZOOM = 1.3;

    private static final Mark NO_OTHER = new Mark(Form.RING, Tone.CALM, "In no other language");
    private static final Mark NO_SHORT = new Mark(Form.RING, Tone.CALM, "No short form");

    private final RemarkFields fields;
    private final WordsList<SpeechFinding> findings =
            new WordsList<>("What listeners might not follow", SpeechFinding::message, this::pointOut);
    private final MarkLine firstDraft;
    private final MarkLine verdict;
    private final MarkLine shortVerdict;
    private final MarkLine other;
    private final JTextArea spoken = PlainText.wrapped("What will be said", "");
    private final JTextArea room = PlainText.wrapped("Time there is, and the plan", "");
    private final JTextArea findingsTitle = PlainText.wrapped("How the whole act reads", "");
    private final JTextArea problems = PlainText.wrapped("What cannot be used", "");
    private transient Appearance appearance;

    /** @param typed told of the remark at every letter typed */
    RemarkPanel(Appearance appearance, Consumer<RemarkDraft> typed) {
        super(new BorderLayout());
        this.appearance = appearance;
        fields = new RemarkFields(typed);
        firstDraft = new MarkLine("First draft", appearance);
        firstDraft.setVisible(false);
        verdict = new MarkLine("Time of the text", appearance);
        shortVerdict = new MarkLine("Time of the short form", appearance);
        other = new MarkLine("Time of the other language", appearance);
        findings.list().setVisibleRowCount(2);
        findingsTitle.setFocusable(false);
        fields.enable(false);
    }

    /** Where in the text one writes. */
    int caret() {
        return fields.text.getCaretPosition();
    }

    /** What is chosen in the text, or else the word one writes in; empty if there is none. */
    String chosenWord() {
        String chosen = fields.text.getSelectedText();
        if (chosen != null && !chosen.isBlank()) {
            return chosen.strip();
        }
        String text = fields.text.getText();
        int from = Math.min(caret(), text.length());
        int to = from;
        while (from > 0 && isOfAWord(text.charAt(from - 1))) {
            from--;
        }
        while (to < text.length() && isOfAWord(text.charAt(to))) {
            to++;
        }
        return text.substring(from, to);
    }

    private static boolean isOfAWord(char c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '\'' || c == '\u2019';
    }

    /** Goes on writing there. */
    void caret(int at) {
        fields.text.setCaretPosition(at);
    }

    /** Goes on writing, behind the last letter. */
    void write() {
        fields.text.requestFocusInWindow();
        caret(fields.text.getDocument().getLength());
    }

    /** Whether the keys are somewhere in it. */
    boolean hasKeys() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, this);
    }

    /** Puts the focus on the text; the next letter replaces all of it. */
    void writeOn() {
        fields.text.requestFocusInWindow();
    }

    void writeAnew() {
        writeOn();
        fields.text.selectAll();
    }

    void show(RemarkPage page) {
        hasTimes(true);
        fields.enable(true);
        fields.show(page);
        fields.underline(page, appearance);
        Mark unread = page.firstDraft();
        firstDraft.setVisible(unread != null);
        if (unread != null) {
            firstDraft.show(unread);
        }
        verdict.show(page.verdict());
        Mark shorter = page.shortVerdict();
        shortVerdict.show(shorter == null ? NO_SHORT : shorter);
        Mark translated = page.other();
        other.show(translated == null ? NO_OTHER : translated);
        spoken.setText("Said: " + page.spoken());
        room.setText(page.room() + (page.planned().isEmpty() ? "" : " " + page.planned()));
        problems.setText(String.join(" ", page.problems()));
        findings.show(page.findings());
        findingsTitle.setText(page.reads()
                + (page.reads().isEmpty() ? "" : " ")
                + (page.findings().isEmpty()
                        ? "Nothing found that listeners might not follow"
                        : "Listeners might not follow:"));
    }

    /** Shows that there is no remark, and why. */
    void blank(String why) {
        hasTimes(false);
        firstDraft.setVisible(false);
        fields.enable(false);
        fields.text.setText("");
        fields.shortText.setText("");
        fields.otherText.setText("");
        spoken.setText("");
        room.setText(why);
        problems.setText("");
        findings.show(List.of());
        findingsTitle.setText(" ");
    }

    /** Or the times of another remark would stand under empty fields. */
    private void hasTimes(boolean now) {
        verdict.setVisible(now);
        shortVerdict.setVisible(now);
        other.setVisible(now);
    }

    void wear(Appearance worn) {
        appearance = worn;
        removeAll();
        findings.list().setCellRenderer(WordsCells.findings(worn));
        findings.list().setBackground(worn.palette().stage());
        fields.wear(worn);
        firstDraft.dress(worn);
        verdict.dress(worn);
        shortVerdict.dress(worn);
        other.dress(worn);
        for (JTextArea each : List.of(spoken, room, problems)) {
            each.setFont(worn.plain(TextRole.BODY));
        }
        room.setForeground(worn.palette().soft());
        problems.setForeground(worn.palette().alarm());
        JScrollPane page = new JScrollPane(new WordsPage(page(worn)));
        page.setBorder(BorderFactory.createEmptyBorder());
        page.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        page.getVerticalScrollBar().setUnitIncrement(worn.px(20));
        add(page, BorderLayout.CENTER);
    }

    private JPanel page(Appearance worn) {
        boolean roomy = worn.zoom().factor() < ROOMY_ZOOM;
        JPanel page = new JPanel(new MigLayout(
                "insets 0 0 0 " + worn.room(6) + ", gap " + worn.room(8) + " " + worn.room(5),
                "[][0:0:,grow,fill][][0:0:,grow,fill]",
                (roomy ? "" : "[]") + "[][][" + worn.room(84) + ":,fill][][][][][][" + worn.room(70) + ":,grow,fill][]["
                        + worn.room(58) + ":,fill][][][][][][]" + (roomy ? "[]" : "[][]") + "[][][" + worn.room(58)
                        + ":,fill][][" + worn.room(40) + ":,fill][]"));
        page.add(label("Kind", fields.kind, worn));
        page.add(fields.kind, roomy ? "growx" : "spanx, growx, wmin 0, wrap");
        page.add(fields.once, "spanx, wmin 0, wrap");
        page.add(label("What to say", fields.text, worn), "spanx, wmin 0, wrap");
        page.add(new InnerScroll(fields.text), "spanx, grow, wmin 0, wrap");
        JPanel marks = new JPanel(new BorderLayout());
        marks.add(firstDraft, BorderLayout.NORTH);
        marks.add(verdict, BorderLayout.CENTER);
        page.add(marks, "spanx, growx, wmin 0, wrap");
        page.add(spoken, "spanx, growx, wmin 0, wrap");
        page.add(room, "spanx, growx, wmin 0, wrap");
        page.add(problems, "spanx, growx, wmin 0, hidemode 3, wrap");
        findingsTitle.setFont(worn.plain(TextRole.LABEL));
        findingsTitle.setForeground(worn.palette().soft());
        page.add(findingsTitle, "spanx, growx, w 0:0:, wrap");
        page.add(findings.scroll(), "spanx, grow, wmin 0, wrap");
        page.add(label("Short form, for when time is short", fields.shortText, worn), "spanx, wmin 0, wrap");
        page.add(new InnerScroll(fields.shortText), "spanx, grow, wmin 0, wrap");
        page.add(shortVerdict, "spanx, growx, wmin 0, wrap");
        page.add(label("Weight", fields.weight, worn));
        page.add(fields.weight, "growx, wrap");
        page.add(label("Said by", fields.speaker, worn));
        page.add(fields.speaker, "spanx, growx, w 0:0:, wrap");
        page.add(label("Tied to", fields.at, worn));
        page.add(fields.at, "spanx, growx, w 0:0:, wrap");
        page.add(label("Over by", fields.until, worn));
        page.add(fields.until, "spanx, growx, w 0:0:, wrap");
        page.add(label("Earliest, s", fields.earliest, worn));
        page.add(fields.earliest, "growx" + (roomy ? "" : ", wrap"));
        page.add(label("Latest end, s", fields.latest, worn));
        page.add(fields.latest, "growx, wrap");
        page.add(label("Language", fields.language, worn));
        page.add(fields.language, "growx, wrap");
        page.add(label("Said by", fields.otherSpeaker, worn));
        page.add(fields.otherSpeaker, "spanx, growx, w 0:0:, wrap");
        page.add(label("The same in that language", fields.otherText, worn), "spanx, wmin 0, wrap");
        page.add(new InnerScroll(fields.otherText), "spanx, grow, wmin 0, wrap");
        page.add(label("The same in short", fields.otherShort, worn), "spanx, wmin 0, wrap");
        page.add(new InnerScroll(fields.otherShort), "spanx, grow, wmin 0, wrap");
        page.add(other, "spanx, growx, wmin 0");
        return page;
    }

    private static JLabel label(String words, Component of, Appearance worn) {
        JLabel label = new JLabel(words);
        label.setLabelFor(of);
        label.setFont(worn.plain(TextRole.LABEL));
        label.setForeground(worn.palette().soft());
        return label;
    }

    private void pointOut(int number) {
        SpeechFinding finding = findings.list().getModel().getElementAt(number);
        if (finding.toChar() <= fields.text.getDocument().getLength()) {
            fields.text.select(finding.fromChar(), finding.toChar());
        }
    }
}
