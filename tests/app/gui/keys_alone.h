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

private:
    std::unique_ptr<StoryHand> m_hand;
};

} // namespace support
