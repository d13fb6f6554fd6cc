#include "app/gui/theme/palette.h"

#include <algorithm>

namespace app {

const std::vector<Palette>& allPalettes() {
    static const std::vector<Palette> palettes = {
        {"sun", "#FFFFFF", "#F2F2F2", "#000000", "#333333", "#003A70", "#7A2400", "#0000C8", "#595959"},
        {"light", "#FAF9F6", "#EFEDE6", "#1B1F23", "#4A4F55", "#0B4A7D", "#8A2F00", "#1747B8", "#85817A"},
        {"dark", "#12161B", "#1D232A", "#F2F0EA", "#B9BFC6", "#8CC4F2", "#FFB07A", "#FFE27A", "#6F7A85"},
    };
    return palettes;
}

const Palette& paletteOf(const QString& name) {
    const auto& all = allPalettes();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Palette& palette) { return palette.name == name; });
    return found == all.end() ? all[1] : *found;
}

} // namespace app
