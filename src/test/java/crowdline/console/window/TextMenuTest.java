package crowdline.console.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.SourceTree;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.event.PopupMenuEvent;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;

class TextMenuTest {
    private static List<String> offered(JTextComponent text) {
        JPopupMenu menu = text.getComponentPopupMenu();
        Stream.of(menu.getPopupMenuListeners()).forEach(l -> l.popupMenuWillBecomeVisible(new PopupMenuEvent(menu)));
        return Stream.of(menu.getSubElements())
                .map(JMenuItem.class::cast)
                .filter(JMenuItem::isEnabled)
                .map(item -> item.getText().split(" {3}", 2)[0])
                .toList();
    }

    @Test
    void whatCanBeDoneWithATextIsOffered() {
        JTextField text = TextMenu.on(new JTextField());
        assertThat(offered(text)).containsExactly("Paste");
        text.setText("loop");
        assertThat(offered(text)).containsExactly("Paste", "Choose all");
        text.select(0, 2);
        assertThat(offered(text)).containsExactly("Cut", "Copy", "Paste", "Choose all");
        text.setEditable(false);
        assertThat(offered(text)).containsExactly("Copy", "Choose all");
        text.setEnabled(false);
        assertThat(offered(text)).containsExactly("Copy", "Choose all");
    }

    @Test
    void everythingIsChosenByIt() {
        JTextArea text = TextMenu.on(new JTextArea("loop\nspin"));
        JPopupMenu menu = text.getComponentPopupMenu();
        ((JMenuItem) menu.getSubElements()[3]).doClick();
        assertThat(text.getSelectedText()).isEqualTo("loop\nspin");
    }

    /** A cell of a table is written in with its keys. */
    @Test
    void everyTextThatIsWrittenHasIt() throws IOException {
        Pattern made = Pattern.compile("(TextMenu\\.on\\()?new JText(?:Field|Area|Pane)\\(");
        List<String> without = new ArrayList<>();
        for (Path file : SourceTree.javaFilesUnder(Path.of("src", "main", "java", "crowdline", "console"))) {
            Matcher found = made.matcher(Files.readString(file));
            while (found.find()) {
                if (found.group(1) == null) {
                    without.add(String.valueOf(file.getFileName()));
                }
            }
        }
        assertThat(without).containsExactlyInAnyOrder("PairTable.java", "BlankCell.java");
    }
}
