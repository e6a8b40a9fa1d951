package crowdline.console.glossary;

import crowdline.console.paint.Digits;
import crowdline.console.theme.Appearance;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.clue.WhatIsThat;
import java.awt.BorderLayout;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** Asks a few questions about what was seen, and tells what it may have been. */
final class AskPanel extends JPanel {
    /** So many lines have a digit of their own. */
    private static final int MOST_DIGITS = 6;

    private final AskPage page;
    private final transient Consumer<String> found;
    private final transient Runnable changed;
    private final transient Supplier<Beliefs> believed;
    private transient @Nullable WhatIsThat now;
    /** What it may have been, as it stands there. */
    private transient List<CatalogueEntry> told = List.of();

    /**
     * @param found told the figure whose page is to be opened
     * @param believed what the aircraft's position says at the moment
     * @param changed told whenever other answers can be given
     */
    AskPanel(Appearance appearance, Consumer<String> found, Supplier<Beliefs> believed, Runnable changed) {
        super(new BorderLayout());
        this.found = found;
        this.believed = believed;
        this.changed = changed;
        page = new AskPage(appearance);
        add(page);
        getAccessibleContext().setAccessibleName("What is that?");
    }

    /** Asks from here on. */
    void begin(WhatIsThat next) {
        now = next;
        String question = next.question();
        Beliefs beliefs = believed.get();
        told = beliefs.inOrder(next.told());
        String left = told.size() == 1 ? "1 figure fits" : told.size() + " figures fit";
        String said = question == null || beliefs.said().isEmpty() ? "" : ". " + beliefs.said();
        page.show(
                question == null
                        ? new AskPage.View(
                                told.size() == 1 ? "It may have been this" : "It may have been one of these",
                                told.stream()
                                        .map(e -> new AskPage.Line(e.name(), beliefs.of(e.name()) + e.lookFor()))
                                        .toList(),
                                left,
                                Digits.upTo(Math.min(MOST_DIGITS, told.size()), "open")
                                        + " its page, Backspace goes back, Alt+Q ends, F5 goes to Live")
                        : new AskPage.View(
                                question,
                                next.answers().stream()
                                        .map(a -> new AskPage.Line(a, ""))
                                        .toList(),
                                left + said,
                                Digits.upTo(Math.min(MOST_DIGITS, next.answers().size()), "answer")
                                        + ", 0 if you are not sure, Backspace goes back, Alt+Q ends, F5 goes to Live"));
        changed.run();
    }

    /** How many lines have digits. */
    int lines() {
        WhatIsThat asked = now;
        return asked == null
                ? 0
                : asked.question() == null ? told.size() : asked.answers().size();
    }

    /** An answer, from 0; or the page of what was found. */
    void answer(int index) {
        WhatIsThat asked = now;
        if (asked == null) {
            return;
        }
        if (asked.question() != null) {
            begin(asked.answer(index));
        } else if (index < told.size()) {
            found.accept(told.get(index).name());
        }
    }

    void notSure() {
        WhatIsThat asked = now;
        if (asked != null) {
            begin(asked.notSure());
        }
    }

    void back() {
        WhatIsThat asked = now;
        if (asked != null) {
            begin(asked.back());
        }
    }

    void wear(Appearance appearance) {
        page.wear(appearance, 1);
    }
}
