#pragma once

#include "tests/app/gui/story_hand.h"
#include "tests/app/gui/window_story.h"

#include <functional>
#include <memory>

namespace support {

/// The acts that the first hour has none of, by somebody without a mouse: Tab, arrows, keys, from wherever
/// the keyboard is.
class KeysAlone : public WindowStory {
protected:
    void begin() {
        openWindow();
        m_hand = std::make_unique<StoryHand>(window(), StoryHand::Way::Keys);
    }
    void TearDown() override {
        m_hand.reset();
        WindowStory::TearDown();
    }
    StoryHand& hand() { return *m_hand; }
    bool comesTrue(const std::function<bool()>& it) { return waitFor(it); }
    /// In view, and says that sooner or later.
    bool says(const char* label, const QString& words) {
        return waitFor([&] {
            for (const auto* each : window().findChildren<QLabel*>(label))
                if (each->isVisible() && each->text().contains(words)) return true;
            return false;
        });
    }

private:
    std::unique_ptr<StoryHand> m_hand;
};

} // namespace support
