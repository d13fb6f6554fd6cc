# What only the owner can say. Everything that is installed takes it from here: the package's control file, its copyright
# file, the desktop entry, the AppStream metadata, the MIME type, the icons and the window's own name.

# A domain turned round and the program's name. Until the owner has a domain it is a placeholder; changing it after a first
# release makes desktops take the program for another one.
set(THOLEPIN_ID "org.tholepin.Tholepin")
set(THOLEPIN_MAINTAINER "Tholepin maintainers")
set(THOLEPIN_MAIL "maintainers@example.org")
set(THOLEPIN_HOMEPAGE "") # an https address, or nothing
# An SPDX expression. No licence has been given so far, so that nobody may pass the program on.
set(THOLEPIN_LICENSE "LicenseRef-proprietary")
set(THOLEPIN_LICENSE_TEXT "No licence has been given yet: all rights are reserved by the authors.")
