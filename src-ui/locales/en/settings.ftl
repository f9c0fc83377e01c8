# Settings.

settings-system = Units shown large
settings-system-metric = Millimetres
settings-system-imperial = Inches
settings-inch-graduation = Finest mark of the inch tape
settings-mm-graduation = Finest mark of the metric rule
settings-rounding = Between two marks
settings-kerf = Measured kerf of the blade
settings-sheet = Measured thickness of the sheet
settings-above-zero = This has to be more than zero.
settings-theme = Look
settings-theme-device = As the device
settings-theme-paper = Paper, light
settings-theme-slate = Slate, dark
settings-keys = Keys for numbers
settings-keys-device = As the device
settings-keys-pad = Our pad
settings-keys-keyboard = Keyboard
settings-about = Scantling works without a network: nothing you type leaves this device. Its figures are estimates for ordinary furniture. The machine's manual, local rules and licensed practice come first.
