package crowdline.console.foot;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.OwnWindow;
import java.awt.BorderLayout;
import java.awt.Frame;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/** All messages of the session to be read again, the newest first. */
public final class MessagesPanel extends JPanel {
    /** What it is called wherever it is opened from. */
    public static final String TITLE = "Messages of this session";

    private static final double S_PER_MIN = 60;
    private static final String NONE = "Nothing has been said yet.";

    MessagesPanel(Appearance appearance, List<Messages.Said> all, double nowS) {
        super(new BorderLayout());
        JTextArea text = PlainText.wrapped(TITLE, words(all, nowS));
        text.setFont(appearance.plain(TextRole.SMALL));
        text.setForeground(appearance.palette().text());
        int edge = appearance.px(16);
        text.setBorder(BorderFactory.createEmptyBorder(edge, edge, edge, edge));
        text.setCaretPosition(0);
        add(new JScrollPane(text));
    }

    /** Shows them in a window of their own, which Escape closes. */
    public static void open(Frame owner, Appearance appearance, List<Messages.Said> all, double nowS) {
        JDialog dialog = OwnWindow.over(owner, TITLE);
        OwnWindow.show(
                dialog,
                new MessagesPanel(appearance, all, nowS),
                OwnWindow.size(appearance, 860, 520, owner.getSize()));
    }

    /** One message a paragraph, with how long ago it was. */
    static String words(List<Messages.Said> all, double nowS) {
        return all.isEmpty()
                ? NONE
                : all.stream()
                        .map(said -> ago(nowS - said.atS()) + ": " + said.mark().word())
                        .collect(Collectors.joining("\n\n"));
    }

    private static String ago(double seconds) {
        long minutes = Math.round(seconds / S_PER_MIN);
        if (minutes < 1) {
            return "Just now";
        }
        return minutes < 60 ? minutes + " min ago" : minutes / 60 + " h " + minutes % 60 + " min ago";
    }
}
