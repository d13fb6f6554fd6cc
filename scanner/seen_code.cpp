#include "scanner/seen_code.h"

namespace scanner {

const char* nameOf(Symbology symbology) {
    switch (symbology) {
    case Symbology::Qr:
        return "qr";
    case Symbology::DataMatrix:
        return "data-matrix";
    case Symbology::Code128:
        return "code-128";
    case Symbology::Ean13:
        return "ean-13";
    case Symbology::Ean8:
        return "ean-8";
    case Symbology::UpcA:
        return "upc-a";
    case Symbology::UpcE:
        return "upc-e";
    case Symbology::Code39:
        return "code-39";
    case Symbology::Other:
        break;
    }
    return "other";
}

const char* nameOf(HowRead howRead) {
    switch (howRead) {
    case HowRead::Plain:
        return "plain";
    case HowRead::Region:
        return "region";
    case HowRead::Fitted:
        return "fitted";
    case HowRead::Guessed:
        break;
    }
    return "guessed";
}

} // namespace scanner
