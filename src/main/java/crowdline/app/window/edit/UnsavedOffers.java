package crowdline.app.window.edit;

import crowdline.console.edit.UnsavedOffer;
import crowdline.storage.unsaved.UnsavedEdit;
import crowdline.storage.unsaved.UnsavedShelf;
import java.nio.file.Path;
import java.time.Clock;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Offers what windows that are no more have left unsaved. On the {@code io} thread. */
final class UnsavedOffers {
    private static final DateTimeFormatter SINCE = DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.UK);

    private final UnsavedShelf shelf;
    private final Clock wall;
    private final Consumer<UnsavedOffer> offer;
    private final Consumer<String> say;

    /**
     * @param offer asks about one
     * @param say says what cannot be asked
     */
    UnsavedOffers(UnsavedShelf shelf, Clock wall, Consumer<UnsavedOffer> offer, Consumer<String> say) {
        this.shelf = shelf;
        this.wall = wall;
        this.offer = offer;
        this.say = say;
    }

    /**
     * Offers what is left of a file, and of shows that have none; what is left of other files is only said.
     *
     * @param file that was opened, or null for none
     * @param now what is edited, or null for nothing
     */
    void say(@Nullable Path file, @Nullable EditedFile now) {
        UnsavedShelf.Found found = shelf.found();
        found.notices().forEach(say);
        for (UnsavedShelf.Kept kept : found.kept()) {
            UnsavedEdit edit = kept.edit();
            Path of = edit.file();
            boolean mine = of != null && file != null && UnsavedShelf.nameOf(of).equals(UnsavedShelf.nameOf(file));
            String since = SINCE.format(edit.at().atZone(wall.getZone()));
            if (mine && now != null && edit.show().equals(now.show())) {
                shelf.forget(kept.name());
            } else if (of == null || mine) {
                offer.accept(new UnsavedOffer(
                        kept.name(),
                        of == null
                                ? "“" + edit.show().title() + "”, which was never saved,"
                                : String.valueOf(of.getFileName()),
                        since,
                        of == null,
                        of != null && now != null && !edit.sha256().equals(now.sha256()),
                        edit.show()));
            } else {
                say.accept("There are unsaved changes in " + of.getFileName() + " from " + since
                        + "; open it to bring them back");
            }
        }
    }
}
