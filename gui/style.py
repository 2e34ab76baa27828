"""The style sheet of the window, made from a theme. Widgets are told apart by their `role`, never by a colour."""

from __future__ import annotations

from gui.theme import (
    BODY,
    BUTTON_CORNER,
    FIGURE,
    NEXT,
    PANEL_CORNER,
    RESULT,
    SMALL,
    TARGET_HEIGHT,
    Theme,
    Tone,
    contrast,
    mix,
)


def style_sheet(theme: Theme) -> str:
    """Return the style sheet of the whole window."""
    return "\n".join((_base(theme), _labels(theme), _buttons(theme), _inputs(theme), _lists(theme), _menus(theme)))


def _base(theme: Theme) -> str:
    frame = f"1px solid {theme.frame}" if theme.frame else "none"
    return f"""
QWidget {{ color: {theme.text}; font-size: {BODY}px; }}
QMainWindow, QDialog, QWidget[role="ground"] {{ background: {theme.ground}; }}
QWidget[role="bar"] {{ background: {theme.panel}; }}
QFrame[role="panel"] {{ background: {theme.panel}; border: {frame}; border-radius: {PANEL_CORNER}px; }}
QFrame[role="raised"] {{ background: {theme.raised}; border: none; border-radius: {BUTTON_CORNER}px; }}
QFrame[role="ask"] {{ background: {theme.panel}; border: 2px solid {theme.primary}; border-radius: {PANEL_CORNER}px; }}
QFrame[role="notice"] {{ background: {theme.panel}; border: none; margin-top: 12px; }}
QFrame[role="ask"][top="true"] {{ margin-top: 12px; }}
QFrame[role="notice"][tone="attention"] {{ border-left: 6px solid {theme.attention}; }}
QFrame[role="notice"][tone="bad"] {{ border-left: 6px solid {theme.bad}; }}
QFrame[role="notice"][tone="good"] {{ border-left: 6px solid {theme.good}; }}
QLabel[role="page"] {{ border: 1px solid {theme.line}; }}
QScrollArea, QScrollArea > QWidget > QWidget[role="scrolled"] {{ background: transparent; border: none; }}
QAbstractScrollArea::corner {{ background: transparent; border: none; }}
QToolTip {{ background: {theme.raised}; color: {theme.text}; border: 1px solid {theme.line}; padding: 6px; }}
QScrollBar:vertical {{ background: transparent; width: 12px; margin: 2px; }}
QScrollBar:horizontal {{ background: transparent; height: 12px; margin: 2px; }}
QScrollBar::handle {{ background: {mix(theme.line, theme.quiet, 0.35)}; border-radius: 4px; }}
QScrollBar::handle:vertical {{ min-height: 32px; }}
QScrollBar::handle:horizontal {{ min-width: 32px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
"""


def _labels(theme: Theme) -> str:
    tones = "\n".join(f'QLabel[tone="{tone.value}"] {{ color: {theme.ink(tone)}; }}' for tone in Tone)
    return f"""
QLabel {{ background: transparent; }}
QLabel[role="small"] {{ font-size: {SMALL}px; color: {theme.ink(Tone.QUIET)}; }}
QLabel[role="fine"] {{ font-size: {SMALL}px; }}
QLabel[role="quiet"] {{ color: {theme.ink(Tone.QUIET)}; }}
QLabel[role="title"] {{ font-weight: 600; }}
QLabel[role="strong"] {{ font-weight: 600; }}
QLabel[role="head"] {{ font-size: {NEXT}px; font-weight: 600; }}
QLabel[role="next"] {{ font-size: {NEXT}px; }}
QLabel[role="figure"] {{ font-size: {FIGURE}px; font-weight: 600; }}
QLabel[role="stop-word"] {{ color: {theme.on_stop}; font-size: {BODY + 1}px; font-weight: 700; }}
QLabel[role="stop-key"] {{ color: {theme.on_stop}; font-size: {SMALL}px; }}
QLabel[role="result-words"] {{ font-size: {FIGURE}px; font-weight: 600; }}
QLabel[role="result"] {{ font-size: {RESULT}px; font-weight: 700; }}
{tones}
"""


def _buttons(theme: Theme) -> str:
    # Where every button has a frame, that of the pressed one tells nothing.
    pressed = f"background: {theme.primary}; color: {theme.on_primary};" if theme.frame else ""
    focus = theme.text if contrast(theme.text, theme.primary) > contrast(theme.ground, theme.primary) else theme.ground
    return f"""
QPushButton {{ background: {theme.raised}; border: 2px solid {theme.frame or theme.raised};
    border-radius: {BUTTON_CORNER}px; min-height: {TARGET_HEIGHT - 4}px; padding: 0 16px; }}
QPushButton:hover {{ border-color: {theme.line}; }}
QPushButton:pressed {{ background: {theme.line}; }}
QPushButton:focus {{ border-color: {theme.primary}; }}
QPushButton:disabled {{ color: {theme.ink(Tone.QUIET)}; background: {theme.panel}; border-color: {theme.line}; }}
QPushButton:checked {{ background: {theme.panel}; border-color: {theme.primary}; }}
QPushButton[role="primary"] {{ background: {theme.primary}; color: {theme.on_primary}; border-color: {theme.primary};
    font-size: {NEXT}px; font-weight: 700; }}
QPushButton[role="primary"]:hover, QPushButton[role="primary"]:pressed {{ background: {theme.primary_pressed};
    border-color: {theme.primary_pressed}; }}
QPushButton[role="primary"]:focus {{ border-color: {focus}; }}
QPushButton[role="stop"] {{ background: {theme.stop}; color: {theme.on_stop}; border-color: {theme.stop};
    font-size: {BODY + 1}px; font-weight: 700; padding: 0 12px; }}
QPushButton[role="stop"]:hover, QPushButton[role="stop"]:pressed {{ background: {theme.stop_pressed};
    border-color: {theme.stop_pressed}; }}
QPushButton[role="stop"]:focus {{ border-color: {theme.on_stop}; }}
QFrame[role="raised"] QPushButton {{ background: {theme.panel}; border-color: {theme.panel}; }}
QPushButton[role="slim"] {{ min-height: 28px; padding: 0 10px; }}
QPushButton[role="tab"] {{ min-height: 28px; padding: 0 4px; background: transparent; border-color: transparent; }}
QPushButton[role="tab"]:hover, QPushButton[role="tab"]:focus {{ border-color: {theme.line}; }}
QPushButton[role="tab"]:checked {{ background: {theme.raised}; border-color: {theme.primary}; }}
QPushButton[role="speed"] {{ padding: 0 4px; }}
QPushButton[role="speed"]:checked, QPushButton[role="slim"]:checked {{ {pressed} }}
QPushButton[role="card"] {{ padding: 0; }}
QCheckBox {{ min-height: {TARGET_HEIGHT - 8}px; spacing: 8px; }}
QCheckBox::indicator {{ width: 20px; height: 20px; border: 2px solid {theme.quiet}; border-radius: 4px;
    background: {theme.ground}; }}
QCheckBox::indicator:checked {{ background: {theme.primary}; border-color: {theme.primary}; }}
QCheckBox:focus {{ color: {theme.ink(Tone.PRESSURE)}; }}
"""


def _inputs(theme: Theme) -> str:
    quiet, edge = theme.ink(Tone.QUIET), mix(theme.line, theme.quiet, 0.4)
    return f"""
QLineEdit, QComboBox, QPlainTextEdit {{ background: {theme.ground}; border: 1px solid {edge};
    border-radius: {BUTTON_CORNER}px; padding: 0 10px; min-height: {TARGET_HEIGHT - 2}px;
    selection-background-color: {theme.primary}; selection-color: {theme.on_primary};
    placeholder-text-color: {quiet}; }}
QLineEdit[role="slim"], QLineEdit[role="slim"]:focus {{ min-height: 28px; padding: 0 6px; }}
QPlainTextEdit {{ padding: 8px 6px; }}
QLineEdit:focus, QComboBox:focus, QPlainTextEdit:focus {{ border: 2px solid {theme.primary}; padding: 0 9px;
    min-height: {TARGET_HEIGHT - 4}px; }}
QPlainTextEdit:focus {{ padding: 7px 5px; }}
QLineEdit[wrong="true"], QComboBox[wrong="true"] {{ border: 2px solid {theme.bad}; padding: 0 9px;
    min-height: {TARGET_HEIGHT - 4}px; }}
QLineEdit:disabled, QComboBox:disabled {{ color: {quiet}; background: {theme.panel}; }}
QComboBox[role="slim"] {{ min-height: 30px; max-width: 190px; }}
QComboBox::drop-down {{ border: none; width: 26px; }}
QComboBox::down-arrow {{ image: none; }}
QComboBox QAbstractItemView {{ background: {theme.raised}; color: {theme.text}; border: 1px solid {theme.line};
    selection-background-color: {theme.primary}; selection-color: {theme.on_primary}; outline: none; }}
QComboBox QAbstractItemView::item {{ min-height: 36px; padding: 0 8px; }}
"""


def _lists(theme: Theme) -> str:
    quiet = theme.ink(Tone.QUIET)
    return f"""
QAbstractItemView {{ background: {theme.panel}; alternate-background-color: {theme.panel}; border: none;
    gridline-color: transparent; selection-background-color: {theme.raised}; outline: none; }}
QListWidget::item {{ min-height: 32px; padding: 0 6px; }}
QListView, QTreeView, QTableView {{ selection-color: {theme.text}; }}
QHeaderView, QHeaderView::section {{ background: {theme.panel}; color: {quiet}; border: none; font-size: {SMALL}px;
    padding: 2px 4px; }}
QTableView::indicator {{ width: 16px; height: 16px; border: 2px solid {theme.quiet}; border-radius: 4px;
    background: {theme.ground}; }}
QTableView::indicator:checked {{ background: {theme.primary}; border-color: {theme.primary}; }}
QTableView QLineEdit, QTableView QLineEdit:focus {{ min-height: 0; padding: 0 3px; border-radius: 2px; }}
QTableWidget {{ selection-background-color: {theme.line}; selection-color: {theme.text}; }}
QTableView:focus {{ border: 1px solid {theme.primary}; border-radius: 4px; }}
QTableCornerButton::section {{ background: {theme.panel}; border: none; }}
"""


def _menus(theme: Theme) -> str:
    return f"""
QMenuBar {{ background: {theme.panel}; color: {theme.text}; padding: 0 8px; }}
QMenuBar::item {{ background: transparent; padding: 4px 10px; border-radius: 4px; }}
QMenuBar::item:selected {{ background: {theme.raised}; }}
QMenu {{ background: {theme.raised}; color: {theme.text}; border: 1px solid {theme.line}; padding: 4px; }}
QMenu::item {{ padding: 8px 24px; border-radius: 4px; }}
QMenu::item:selected {{ background: {theme.primary}; color: {theme.on_primary}; }}
QMenu::item:disabled {{ color: {theme.ink(Tone.QUIET)}; }}
QMenu::separator {{ height: 1px; background: {theme.line}; margin: 4px 8px; }}
QStatusBar {{ background: {theme.panel}; }}
"""
