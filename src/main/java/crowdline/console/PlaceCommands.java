package crowdline.console;

import crowdline.console.debrief.DebriefHost;
import crowdline.console.debrief.DebriefPanel;
import crowdline.console.glossary.GlossaryPanel;
import crowdline.console.keys.Command;
import crowdline.console.place.Place;
import crowdline.console.walk.Walk;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;

/** What the keys of Walk through and Debrief do. */
final class PlaceCommands {
    private final Host host;
    private final ConsolePane pane;

    PlaceCommands(Host host, ConsolePane pane) {
        this.host = host;
        this.pane = pane;
        pane.walk()
                .answer(
                        share -> {
                            Walk walk = host.walk();
                            if (walk != null) {
                                walk.goTo(share, host.nowS());
                                refresh();
                            }
                        },
                        text -> {
                            Walk walk = host.walk();
                            if (walk != null) {
                                walk.write(text, host.nowS());
                                refresh();
                            }
                            pane.requestFocusInWindow();
                        });
    }

    /** Shows the present moment of the place in front. */
    void refresh() {
        if (pane.place() == Place.WALK) {
            Walk walk = host.walk();
            pane.showWalk(walk == null ? null : walk.view(host.nowS()));
        } else if (pane.place() == Place.DEBRIEF) {
            DebriefHost debrief = host.debrief();
            pane.showDebrief(debrief == null ? null : debrief.view());
        }
    }

    void walk(Command command) {
        Walk walk = host.walk();
        if (walk == null) {
            return;
        }
        if (command == Command.NOTE) {
            // While somebody writes, nothing runs away under the note.
            walk.pause(host.nowS());
            pane.walk().openNote(walk.view(host.nowS()).noteFor(), walk.note(host.nowS()));
        } else {
            walk.command(command, host.nowS());
        }
        refresh();
    }

    void debrief(Command command) {
        DebriefHost desk = host.debrief();
        if (desk == null) {
            return;
        }
        pane.debrief().ifShown(panel -> debrief(command, desk, panel));
    }

    private void debrief(Command command, DebriefHost desk, DebriefPanel panel) {
        switch (command) {
            case LATER_RUN -> panel.step(1);
            case EARLIER_RUN -> panel.step(-1);
            case SAVE_TEXT -> save("debrief.txt", desk::saveText);
            case SAVE_TABLE -> save("debrief.csv", desk::saveTable);
            case PRINT -> desk.print();
            default -> {}
        }
    }

    void glossary(Command command) {
        switch (command) {
            // The moment the drill is asked for is as good a seed as any.
            case DRILL -> pane.drill(Math.round(host.nowS() * 1000));
            case DRILL_1 -> pane.ifGlossary(g -> g.answer(0));
            case DRILL_2 -> pane.ifGlossary(g -> g.answer(1));
            case DRILL_3 -> pane.ifGlossary(g -> g.answer(2));
            case DRILL_4 -> pane.ifGlossary(g -> g.answer(3));
            case DRILL_ON -> pane.ifGlossary(GlossaryPanel::nextQuestion);
            default -> {}
        }
    }

    private void save(String name, Consumer<Path> receiver) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Save the debrief");
        chooser.setSelectedFile(new File(name));
        if (chooser.showSaveDialog(pane) == JFileChooser.APPROVE_OPTION) {
            Path file = chooser.getSelectedFile().toPath();
            if (!file.toFile().exists() || replace(pane, file)) {
                receiver.accept(file);
            }
        }
    }

    private static boolean replace(Component over, Path file) {
        return JOptionPane.showConfirmDialog(
                        over,
                        file.getFileName() + " already exists. Replace it?",
                        "Save the debrief",
                        JOptionPane.OK_CANCEL_OPTION)
                == JOptionPane.OK_OPTION;
    }
}
