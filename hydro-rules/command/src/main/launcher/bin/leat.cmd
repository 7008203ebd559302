@echo off
rem Starts leat. JAVA_HOME or the java of the PATH, version 17 or later; LEAT_JAVA_OPTIONS are handed to it.
setlocal
set "LEAT_JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "LEAT_JAVA=%JAVA_HOME%\bin\java.exe"
"%LEAT_JAVA%" -Xshare:auto -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xss4m %LEAT_JAVA_OPTIONS% -jar "%~dp0..\lib\leat.jar" %*
exit /b %ERRORLEVEL%
