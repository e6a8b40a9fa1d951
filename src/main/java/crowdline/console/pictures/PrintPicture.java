package crowdline.console.pictures;

import crowdline.console.pictures.Pictures.Setting;
import crowdline.console.preview.PaperHost;
import crowdline.console.preview.PreviewPanel;
import crowdline.console.preview.PreviewWindow;
import crowdline.console.theme.Appearance;
import crowdline.console.window.Snapshot;
import crowdline.paper.SheetKind;
import crowdline.sheet.page.Pages;
import crowdline.show.Show;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The preview of paper, as large as it is over a window of the setting's size.
 *
 * @param show that is printed
 * @param pages its cards
 */
public record PrintPicture(Show show, Pages pages) implements PaperHost {
    static final String TITLE = "print";

    BufferedImage draw(Appearance appearance, Setting setting) {
        Dimension size = PreviewWindow.size(appearance, new Dimension(setting.widthPx(), setting.heightPx()));
        PreviewPanel panel =
                new PreviewPanel(appearance, this, show, SheetKind.CARDS, name -> Optional.empty(), () -> {});
        panel.setPreferredSize(size);
        return Snapshot.of(panel, size.width, size.height);
    }

    @Override
    public void make(Show of, Asked asked, Answer answer) {
        answer.made(pages);
    }

    @Override
    public void save(Pages made, Path file, Answer answer) {}

    @Override
    public void print(Pages made, Answer answer) {}

    @Override
    public void stop() {}
}
